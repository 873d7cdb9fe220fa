package monochord.practice.skill;

import static monochord.practice.Misconception.COUNTED_FROM_ZERO;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.QUALITY_OF_THE_KEY;
import static monochord.practice.Misconception.RELATIVE_FOR_PARALLEL;
import static monochord.practice.Misconception.ROOT_LOWERED;
import static monochord.practice.Misconception.ROOT_ONLY;
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
import monochord.practice.teaching.Walk;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/** A borrowed chord, by name or by notes. */
final class BorrowedChord implements Skill {
    @Override
    public String id() {
        return "borrowed-chord";
    }

    @Override
    public String title() {
        return "Borrowed chords";
    }

    @Override
    public List<String> subjects(Key key) {
        return BorrowedSubject.all(key);
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        BorrowedSubject about = BorrowedSubject.parse(subject, key);
        String prompt = "Which chord is " + about.named() + ", " + about.inWords() + "?";
        String root = Walk.toward(about.degree(), key);
        ChordRubric judge = ChordRubric.named(about.chord(), root, () -> slips(about));
        return Question.of(new Topic(id(), about.text(), key), Form.CHORD, prompt, judge, coaching(about));
    }

    private static List<Slip<Tones>> slips(BorrowedSubject about) {
        List<Slip<Tones>> slips = new ArrayList<>();
        if (about.change() == 0) {
            keptFromKey(about, slips);
        } else {
            rootSlips(about, slips);
        }
        bareLetter(about, slips);
        relative(about, slips);
        otherKinds(about, slips);
        neighbour(about, slips);
        return slips;
    }

    private static void keptFromKey(BorrowedSubject about, List<Slip<Tones>> slips) {
        Chord own = about.own();
        NoteName root = about.chord().root();
        slips.add(new Slip<>(
                QUALITY_OF_THE_KEY,
                Tones.of(own),
                () -> Say.chord(own) + " is the key's own chord there. The root stays; " + moved(about) + "."));
        NoteName lowered = NoteName.at(root.fifths() - 7);
        slips.add(new Slip<>(
                ROOT_LOWERED,
                Tones.of(new Chord(lowered, about.chord().kind())),
                () -> "No flat stands in front, so the root stays " + Say.note(root) + "; " + moved(about) + "."));
    }

    /** The places in the chord that leave the key. */
    private static String moved(BorrowedSubject about) {
        Key key = about.key();
        List<String> moves = about.chord().tones().stream()
                .filter(tone -> !key.holds(tone))
                .map(tone -> Say.note(key.note(key.degreeOf(tone).number())))
                .toList();
        return "inside the chord " + Say.words(moves) + (moves.size() == 1 ? " moves" : " move") + " a half step";
    }

    private static void rootSlips(BorrowedSubject about, List<Slip<Tones>> slips) {
        Chord natural = about.onNaturalRoot();
        String walk = Walk.toward(about.degree(), about.key());
        slips.add(new Slip<>(
                NOT_LOWERED,
                Tones.of(natural),
                () -> Say.chord(natural) + " has the root where the key has it. " + walk));
        slips.add(new Slip<>(
                NOT_LOWERED,
                Tones.of(about.own()),
                () -> Say.chord(about.own()) + " is the key's own chord there. " + walk));
        slips.add(new Slip<>(ROOT_ONLY, Tones.of(about.rootOnly()), () -> rootOnly(about)));
    }

    private static String rootOnly(BorrowedSubject about) {
        Chord chord = about.chord();
        List<NoteName> kept =
                chord.tones().stream().filter(about.rootOnly()::contains).toList();
        List<String> changes = new ArrayList<>();
        for (int i = 0; i < chord.tones().size(); i++) {
            NoteName left = about.rootOnly().get(i);
            NoteName due = chord.tones().get(i);
            if (!left.equals(due)) {
                changes.add(Say.note(left));
            }
        }
        String still = changes.size() == 1 ? " still belongs to " : " still belong to ";
        return Say.areRight(kept) + ". " + Say.words(changes) + still + Say.key(about.key()) + ": measure "
                + (changes.size() == 1 ? "it" : "them") + " from the new root.";
    }

    private static void bareLetter(BorrowedSubject about, List<Slip<Tones>> slips) {
        Chord chord = about.chord();
        NoteName bare = NoteName.of(chord.root().letter(), Math.min(0, about.change()));
        NoteName own = about.key().note(about.degree().number());
        slips.add(new Slip<>(
                SIGNATURE_FORGOTTEN,
                Tones.of(new Chord(bare, chord.kind())),
                () -> "In " + Say.key(about.key()) + " the "
                        + Walk.ordinal(about.degree().number()) + " is " + Say.note(own) + ". Start from there."));
    }

    private static void relative(BorrowedSubject about, List<Slip<Tones>> slips) {
        Key relative = about.key().relative();
        Chord there = about.numeral().in(new Key(relative.tonic(), about.key().mode()));
        slips.add(new Slip<>(
                RELATIVE_FOR_PARALLEL,
                Tones.of(there),
                () -> "You counted from " + Say.note(relative.tonic()) + ", the tonic of the relative. Stay on "
                        + Say.note(about.key().tonic()) + " and count its " + about.degreeInWords() + "."));
    }

    private static void otherKinds(BorrowedSubject about, List<Slip<Tones>> slips) {
        Chord chord = about.chord();
        for (String suffix : List.of("", "m", "dim", "aug")) {
            Chord other = new Chord(chord.root(), ChordKind.parse(suffix));
            slips.add(new Slip<>(
                    WRONG_QUALITY,
                    Tones.of(other),
                    () -> "The root is right. " + about.numeral().write(Signs.MUSIC) + " asks for "
                            + (about.isTriad() ? Say.article(about.kind()) : "the ") + about.kind()
                            + " chord."));
        }
    }

    private static void neighbour(BorrowedSubject about, List<Slip<Tones>> slips) {
        for (String text : BorrowedSubject.all(about.key())) {
            Numeral other = Numeral.parse(text);
            Chord there = other.in(about.key());
            Degree next = about.key().degreeOf(there.root());
            boolean following = next.number() == about.degree().number() % 7 + 1;
            slips.add(new Slip<>(
                    following ? COUNTED_FROM_ZERO : WRONG_DEGREE,
                    Tones.of(there),
                    () -> Say.chord(there) + " is " + other.write(Signs.MUSIC) + ". "
                            + Walk.toward(about.degree(), about.key())));
        }
    }

    private static Coaching coaching(BorrowedSubject about) {
        Chord chord = about.chord();
        String root = Walk.to(about.degree(), about.key());
        return Coaching.of(
                "Root first, then the letters, then the quality.",
                Walk.toward(about.degree(), about.key()),
                root + " " + Walk.allButLast(chord) + " The chord is " + about.kindInWords() + ".",
                root + " " + Walk.stack(chord) + " " + Walk.chord(chord));
    }
}
