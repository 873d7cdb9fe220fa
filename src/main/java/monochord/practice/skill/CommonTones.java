package monochord.practice.skill;

import static monochord.practice.Misconception.EXTRA_NOTE;
import static monochord.practice.Misconception.LETTERS_ONLY;
import static monochord.practice.Misconception.MISSING_NOTE;
import static monochord.practice.Misconception.NOT_LOWERED;
import static monochord.practice.Misconception.WRONG_QUALITY;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.VoiceLeading;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.CommonTonesRubric;
import monochord.practice.answer.ModelledError;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** The notes that two chords share, so that a finger can stay. */
final class CommonTones implements Skill {
    private static final List<String> IN_MAJOR = List.of(
            "1 5",
            "1 4",
            "1 6-",
            "4 6-",
            "2- 4",
            "1 3-",
            "4 5",
            "1 b6",
            "4 b6",
            "1 4-",
            "4 4-",
            "1 b3",
            "5 b6",
            "b6 b7",
            "2-7 57",
            "1maj7 6-7",
            "57 1maj7");
    private static final List<String> IN_MINOR = List.of("1- 6", "1- 3", "1- 4-", "6 3", "1- 5", "6 7", "4-7 57");

    @Override
    public String id() {
        return "common-tones";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Common tones");
    }

    /** Two chords of one key; the borrowed ones come later. */
    @Override
    public int firstSubjects() {
        return 5;
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
        Phrase prompt =
                Phrase.sentence("Which notes do {0} and {1} share? If they share none, say none.", first, second);
        CommonTonesRubric judge = new CommonTonesRubric(first, second, () -> errors(about));
        Topic topic = new Topic(id(), about.numbers(Signs.ASCII), key);
        return Question.of(topic, AnswerForm.NOTES, prompt, judge, coaching(first, second));
    }

    private static List<ModelledError<List<NoteName>>> errors(ProgressionSubject about) {
        Chord first = about.chords().get(0);
        Chord second = about.chords().get(1);
        List<ModelledError<List<NoteName>>> errors = new ArrayList<>();
        taken(NOT_LOWERED, about, about.unaltered(), errors);
        taken(WRONG_QUALITY, about, about.plain(about.chords()), errors);
        List<NoteName> shared = VoiceLeading.commonTones(first, second);
        errors.add(new ModelledError<>(
                LETTERS_ONLY,
                first.tones().stream().filter(tone -> hasLetter(second, tone)).toList(),
                () -> Phrase.sentence(
                        "Those letters are in both, not all of them with the same accidental. Spell {0} note by note.",
                        second)));
        errors.add(new ModelledError<>(
                EXTRA_NOTE,
                first.tones(),
                () -> Phrase.sentence("That is all of {0}. Which of them are in {1} as well?", first, second)));
        if (shared.size() > 1) {
            errors.add(new ModelledError<>(
                    MISSING_NOTE, shared.subList(0, 1), () -> CommonTonesRubric.more(shared.subList(0, 1), first)));
        }
        return errors;
    }

    /** What two other chords share, which a learner takes for these. */
    private static void taken(
            Misconception misconception,
            ProgressionSubject about,
            List<Chord> others,
            List<ModelledError<List<NoteName>>> errors) {
        int wrong = others.get(0).equals(about.chords().get(0)) ? 1 : 0;
        Chord chord = about.chords().get(wrong);
        List<NoteName> taken = VoiceLeading.commonTones(others.get(0), others.get(1));
        List<NoteName> shared =
                VoiceLeading.commonTones(about.chords().get(0), about.chords().get(1));
        if (!shared.containsAll(taken)) { // else the answer is not wrong, only not all
            errors.add(new ModelledError<>(
                    misconception,
                    taken,
                    () -> Phrase.sentence("That is so with {0}, the key's own chord.", others.get(wrong))
                            .then(Phrase.sentence("{0} is {1}.", chord, Phrase.row(chord.tones())))));
        }
    }

    private static boolean hasLetter(Chord chord, NoteName tone) {
        return chord.tones().stream().anyMatch(other -> other.letter() == tone.letter());
    }

    private static Coaching coaching(Chord first, Chord second) {
        List<NoteName> shared = VoiceLeading.commonTones(first, second);
        Phrase both = Phrase.sentence("{0}", CommonTonesRubric.sideBySide(first, second));
        Phrase result = shared.isEmpty()
                ? Phrase.sentence("Nothing stands in both, so every finger moves.")
                : Phrase.counted(
                        shared.size(),
                        "In both: {0}. Hold that and move the rest.",
                        "In both: {0}. Hold those and move the rest.",
                        Phrase.list(shared));
        return Coaching.of(
                Phrase.sentence("Spell both chords and lay one under the other."),
                Phrase.sentence("{0} is {1}.", first, Phrase.row(first.tones())),
                both.then(Phrase.sentence(
                        "Go through the first note by note: is it in the second, with the same accidental?")),
                both.then(result));
    }
}
