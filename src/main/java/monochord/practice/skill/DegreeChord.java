package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
import static monochord.practice.Misconception.SIGNATURE_FORGOTTEN;
import static monochord.practice.Misconception.WRONG_DEGREE;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.ChordRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.reading.Tones;
import monochord.practice.teaching.Own;
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;

/** The key's own chord on a degree, by name or by notes. */
final class DegreeChord implements Skill {
    /** From the chords a band leans on to the one it hardly uses. */
    static final List<String> DEGREES = List.of("1", "4", "5", "6", "2", "3", "7");

    private static final List<ChordKind> KINDS =
            List.of(ChordKind.MAJOR, ChordKind.MINOR, ChordKind.DIMINISHED, ChordKind.AUGMENTED);

    @Override
    public String id() {
        return "degree-chord";
    }

    @Override
    public String title() {
        return "Chords on the degrees";
    }

    @Override
    public List<String> subjects(Key key) {
        return DEGREES;
    }

    @Override
    public Question question(Key key, String subject) {
        int number = Own.degree(subject, key);
        Chord chord = Own.triad(number, key);
        String prompt = "Which triad stands on the " + Walk.ordinal(number) + " degree of " + Say.key(key) + "?";
        ChordRubric judge = ChordRubric.named(
                chord, Own.alternative(number, key), Walk.count(number, key), () -> slips(number, key));
        return Question.of(new Topic(id(), "" + number, key), Form.CHORD, prompt, judge, coaching(number, chord, key));
    }

    private static List<Slip<Tones>> slips(int number, Key key) {
        List<Slip<Tones>> slips = new ArrayList<>();
        Chord chord = Own.triad(number, key);
        ChordKind ofKey = Own.triad(1, key).kind();
        Chord next = Own.next(number, key);
        slips.add(new Slip<>(
                COUNTED_FROM_ZERO,
                Tones.of(next),
                () -> Say.chord(next) + " stands one degree further. Count the tonic as 1. "
                        + Walk.count(number, key)));
        slips.add(new Slip<>(
                SIGNATURE_FORGOTTEN,
                Tones.of(Own.bare(chord.tones())),
                () -> "The letters are right, but the signature counts in every chord, and here it has "
                        + Say.count(Math.abs(key.signature())) + (key.signature() < 0 ? " flat" : " sharp")
                        + (Math.abs(key.signature()) == 1 ? "." : "s.")));
        slips.add(new Slip<>(
                QUALITY_OF_THE_KEY,
                Tones.of(new Chord(chord.root(), ofKey)),
                () -> "The root is right. The scale decides the rest, not the name of the key: take its "
                        + "third from there and count the half steps."));
        for (ChordKind kind : KINDS) {
            slips.add(new Slip<>(
                    WRONG_QUALITY,
                    Tones.of(new Chord(chord.root(), kind)),
                    () -> "The root is right. Take third and fifth from the scale, then measure the two thirds."));
        }
        otherDegrees(number, key, slips);
        return slips;
    }

    private static void otherDegrees(int number, Key key, List<Slip<Tones>> slips) {
        for (String other : DEGREES) {
            Chord there = Own.triad(Own.degree(other, key), key);
            slips.add(new Slip<>(
                    WRONG_DEGREE,
                    Tones.of(there),
                    () -> Say.chord(there) + " is the chord on " + other + ". " + Walk.count(number, key)));
        }
    }

    private static Coaching coaching(int number, Chord chord, Key key) {
        String signs = key.signature() == 0
                ? "no signs"
                : Say.count(Math.abs(key.signature())) + (key.signature() < 0 ? " flats" : " sharps");
        return Coaching.of(
                "Find the root first: the tonic is 1.",
                Walk.count(number, key),
                Walk.allButLast(chord) + " The signature has " + signs + ".",
                Walk.count(number, key) + " " + Own.gathered(number, key) + " " + Walk.thirds(chord) + ", which makes "
                        + Say.inWords(chord) + ".");
    }
}
