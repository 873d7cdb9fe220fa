package monochord.practice.skill;

import static monochord.practice.Misconception.EXTRA_NOTE;
import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.MISSING_NOTE;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.VoiceLeading;
import monochord.practice.Coaching;
import monochord.practice.Form;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.CommonTonesRubric;
import monochord.practice.answer.Say;
import monochord.practice.answer.Slip;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** The notes that two chords share, so that a finger can stay. */
final class CommonTones implements Skill {
    private static final List<String> IN_MAJOR = List.of(
            "1 5", "1 4", "1 6-", "4 6-", "2- 4", "1 3-", "4 5", "1 b6", "4 b6", "1 4-", "4 4-", "1 b3", "5 b6",
            "b6 b7");
    private static final List<String> IN_MINOR = List.of("1- 6", "1- 3", "1- 4-", "6 3", "1- 5", "6 7");

    @Override
    public String id() {
        return "common-tones";
    }

    @Override
    public String title() {
        return "Common tones";
    }

    @Override
    public List<String> subjects(Key key) {
        return key.isMinor() ? IN_MINOR : IN_MAJOR;
    }

    @Override
    public Question question(Key key, String subject) {
        ProgressionSubject about = ProgressionSubject.parse(subject, key);
        if (about.chords().size() != 2) {
            throw Unreadable.because(subject, 0, "two chords to compare", "expected two of them", "F Ab");
        }
        Chord first = about.chords().get(0);
        Chord second = about.chords().get(1);
        String prompt = "Which notes do " + Say.chord(first) + " and " + Say.chord(second)
                + " share? If they share none, say none.";
        CommonTonesRubric judge = new CommonTonesRubric(first, second, () -> slips(about));
        Topic topic = new Topic(id(), about.numbers(Signs.ASCII), key);
        return Question.of(topic, Form.NOTES, prompt, judge, coaching(first, second));
    }

    private static List<Slip<List<NoteName>>> slips(ProgressionSubject about) {
        Chord first = about.chords().get(0);
        Chord second = about.chords().get(1);
        List<Slip<List<NoteName>>> slips = new ArrayList<>();
        taken(NOT_LOWERED, about, about.unaltered(), slips);
        taken(WRONG_QUALITY, about, about.plain(about.chords()), slips);
        List<NoteName> shared = VoiceLeading.commonTones(first, second);
        slips.add(new Slip<>(
                LETTERS_ONLY,
                first.tones().stream().filter(tone -> hasLetter(second, tone)).toList(),
                () -> "Those letters are in both, not all of them with the same accidental. Spell " + Say.chord(second)
                        + " note by note."));
        slips.add(new Slip<>(
                EXTRA_NOTE,
                first.tones(),
                () -> "That is all of " + Say.chord(first) + ". Which of them are in " + Say.chord(second)
                        + " as well?"));
        if (shared.size() > 1) {
            slips.add(new Slip<>(
                    MISSING_NOTE,
                    shared.subList(0, 1),
                    () -> Say.areRight(shared.subList(0, 1)) + ", and there is more. Go on through " + Say.chord(first)
                            + " note by note."));
        }
        return slips;
    }

    /** What two other chords share, which a learner takes for these. */
    private static void taken(
            Misconception misconception,
            ProgressionSubject about,
            List<Chord> others,
            List<Slip<List<NoteName>>> slips) {
        int wrong = others.get(0).equals(about.chords().get(0)) ? 1 : 0;
        Chord chord = about.chords().get(wrong);
        if (!others.equals(about.chords())) {
            slips.add(new Slip<>(
                    misconception,
                    VoiceLeading.commonTones(others.get(0), others.get(1)),
                    () -> "That is so with " + Say.chord(others.get(wrong)) + ", the key's own chord. "
                            + Say.chord(chord) + " is " + Say.row(chord.tones()) + "."));
        }
    }

    private static boolean hasLetter(Chord chord, NoteName tone) {
        return chord.tones().stream().anyMatch(other -> other.letter() == tone.letter());
    }

    private static String sideBySide(Chord first, Chord second) {
        return Say.chord(first) + " is " + Say.row(first.tones()) + ", " + Say.chord(second) + " is "
                + Say.row(second.tones()) + ".";
    }

    private static Coaching coaching(Chord first, Chord second) {
        List<NoteName> shared = VoiceLeading.commonTones(first, second);
        String both = sideBySide(first, second);
        String result = shared.isEmpty()
                ? "Nothing stands in both, so every finger moves."
                : "In both: " + Say.list(shared) + ". Hold " + (shared.size() == 1 ? "that" : "those")
                        + " and move the rest.";
        return Coaching.of(
                "Spell both chords and lay one under the other.",
                Say.chord(first) + " is " + Say.row(first.tones()) + ".",
                both + " Go through the first note by note: is it in the second, with the same accidental?",
                both + " " + result);
    }
}
