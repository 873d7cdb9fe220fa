package monochord.practice.skill;

import static monochord.practice.Misconception.KEY_FOR_CHORD;
import static monochord.practice.Misconception.LETTERS_ONLY;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.melody.NoteChange;
import monochord.harmony.melody.Standing;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.MendRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.practice.answer.StandingRubric;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/**
 * Whether a note of a tune can be rested on over a chord, and which near note could where it clashes. The subject is a
 * degree or note over a chord ({@code 3 over bVI}), with {@code mend} before it where a note is asked for.
 *
 * <p>What fits is common practice, no source; every explanation says that it is advice.
 */
final class MelodyFit implements Skill {
    private static final List<String> IN_MAJOR = List.of(
            "3 over I",
            "4 over I",
            "1 over bVI",
            "3 over bVI",
            "5 over bVI",
            "6 over iv",
            "2 over bVII",
            "7 over bVII",
            "1 over bVII",
            "5 over bIII",
            "mend 3 over bVI",
            "mend 6 over iv",
            "mend 7 over bVII",
            "mend 3 over i");
    private static final List<String> IN_MINOR = List.of(
            "1 over i", "1 over IV", "5 over IV", "b6 over IV", "b3 over I", "mend b6 over IV", "mend b3 over I");

    @Override
    public String id() {
        return "melody-fit";
    }

    @Override
    public String title() {
        return "A tune over a chord";
    }

    @Override
    public List<String> subjects(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    @Override
    public List<Key> keys() {
        return BorrowedSubject.keys();
    }

    @Override
    public Question question(Key key, String subject) {
        TuneSubject about = TuneSubject.parse(subject, key);
        return about.mend() ? mend(about) : standing(about);
    }

    private Question standing(TuneSubject about) {
        String prompt = "In " + Say.key(about.key()) + " a tune rests on " + Say.note(about.note()) + " over "
                + Say.chord(about.chord()) + ". Chord tone, colour, suspension or clash?";
        StandingRubric judge = new StandingRubric(about.standing(), reason(about), way(about), () -> slips(about));
        return Question.of(new Topic(id(), about.text(), about.key()), Form.CHOICE, prompt, judge, coaching(about));
    }

    private Question mend(TuneSubject about) {
        List<NoteChange> changes = about.changes();
        String prompt = "In " + Say.key(about.key()) + " a tune rests on " + Say.note(about.note()) + " over "
                + Say.chord(about.chord()) + ", and it clashes. Which note, as near as can be, would fit?";
        NoteName nearest = changes.get(0).to().name();
        String reason = "The chord is " + Say.row(about.chord().tones()) + "; from " + Say.note(about.note())
                + " the nearest that fits is " + Say.note(nearest) + ".";
        MendRubric judge = new MendRubric(changes, reason, mendWay(about), () -> mendSlips(about));
        return Question.of(
                new Topic(id(), about.text(), about.key()), Form.NOTES, prompt, judge, mendCoaching(about, reason));
    }

    private static List<Slip<Standing>> slips(TuneSubject about) {
        List<Slip<Standing>> slips = new ArrayList<>();
        about.sameLetter()
                .ifPresent(tone -> slips.add(new Slip<>(
                        LETTERS_ONLY,
                        Standing.CHORD_TONE,
                        () -> "The letter is in the chord, but as " + Say.note(tone) + ". What does "
                                + Say.note(about.note()) + " do beside it?")));
        if (about.key().holds(about.note())) {
            slips.add(new Slip<>(
                    KEY_FOR_CHORD,
                    Standing.COLOUR,
                    () -> "It belongs to the key; what counts here is the chord. " + way(about)));
        }
        return slips;
    }

    private static List<Slip<NoteName>> mendSlips(TuneSubject about) {
        return List.of(new Slip<>(
                KEY_FOR_CHORD,
                about.note(),
                () -> Say.note(about.note()) + " belongs to the key, but it is the note that clashes. The chord is "
                        + Say.row(about.chord().tones()) + "."));
    }

    private static String mendWay(TuneSubject about) {
        return "The chord is " + Say.row(about.chord().tones()) + ": look for the nearest to " + Say.note(about.note())
                + ".";
    }

    /** What to look at, and no name for it. */
    private static String way(TuneSubject about) {
        String note = Say.note(about.note());
        return Say.chord(about.chord()) + " is " + Say.row(about.chord().tones()) + ". "
                + (about.chord().holds(about.note())
                        ? "Is " + note + " among them?"
                        : note + " is not among them: how far does it lie above the nearest tone below?");
    }

    private static String reason(TuneSubject about) {
        String note = Say.note(about.note());
        String chord = Say.chord(about.chord()) + " is " + Say.row(about.chord().tones()) + "; ";
        return chord
                + switch (about.standing()) {
                    case CHORD_TONE -> note + " is one of its tones.";
                    case COLOUR -> note + " rubs against none of its tones from above, so it colours the chord.";
                    case TENSE -> note + " colours it with an edge.";
                    case SUSPENSION_ONLY ->
                        note + " is the fourth over a major third: a suspension, to be let fall, not to rest on.";
                    case CLASH -> note + " is none of its tones and rubs against one of them: a clash.";
                };
    }

    private static Coaching coaching(TuneSubject about) {
        String row = Say.row(about.chord().tones());
        String note = Say.note(about.note());
        return Coaching.of(
                "Spell the chord first.",
                Say.chord(about.chord()) + " is " + row + ".",
                Say.chord(about.chord()) + " is " + row + ". Is " + note
                        + " one of them, accidental and all? If not, does it lie a half step above one?",
                reason(about) + " That is custom, so trust your ear too.");
    }

    private static Coaching mendCoaching(TuneSubject about, String reason) {
        return Coaching.of(
                "Spell the chord first.",
                Say.chord(about.chord()) + " is " + Say.row(about.chord().tones()) + ".",
                "Look for the tone of " + Say.row(about.chord().tones()) + " nearest to " + Say.note(about.note())
                        + ".",
                reason + " Whether the tune may change is for the band to say.");
    }
}
