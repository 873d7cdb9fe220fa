package monochord.practice.skill;

import static monochord.practice.Misconception.KEY_FOR_CHORD;
import static monochord.practice.Misconception.LETTERS_ONLY;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.melody.NoteChange;
import monochord.harmony.melody.Standing;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.MendRubric;
import monochord.practice.answer.ModelledError;
import monochord.practice.answer.StandingRubric;
import monochord.text.Phrase;
import monochord.theory.Chord;
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
    public Phrase title() {
        return Phrase.of("A tune over a chord");
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
        Phrase prompt = about.falls()
                ? Phrase.sentence(
                        "In {0} a tune comes to {1} over {2} and then falls to {3}. Chord tone, colour, suspension or clash?",
                        about.key(), about.note(), about.chord(), about.below())
                : Phrase.sentence(
                        "In {0} a tune rests on {1} over {2}. Chord tone, colour, suspension or clash?",
                        about.key(), about.note(), about.chord());
        StandingRubric judge = new StandingRubric(
                about.standing(), reason(about), way(about), given -> help(given, about), () -> errors(about));
        return Question.of(
                new Topic(id(), about.text(), about.key()), AnswerForm.CHOICE, prompt, judge, coaching(about));
    }

    private Question mend(TuneSubject about) {
        List<NoteChange> changes = about.changes();
        Phrase prompt = Phrase.sentence(
                "In {0} a tune rests on {1} over {2}, and it clashes. Which note, as near as can be, would fit?",
                about.key(), about.note(), about.chord());
        NoteName nearest = changes.get(0).to().name();
        Phrase reason = Phrase.sentence(
                "The chord is {0}; from {1} the nearest that fits is {2}.",
                Phrase.row(about.chord().tones()), about.note(), nearest);
        MendRubric judge = new MendRubric(
                changes, reason, mendWay(about), given -> mendHelp(given, about), () -> mendErrors(about));
        return Question.of(
                new Topic(id(), about.text(), about.key()),
                AnswerForm.NOTES,
                prompt,
                judge,
                mendCoaching(about, reason));
    }

    private static List<ModelledError<Standing>> errors(TuneSubject about) {
        List<ModelledError<Standing>> errors = new ArrayList<>();
        about.sameLetter()
                .ifPresent(tone -> errors.add(new ModelledError<>(
                        LETTERS_ONLY,
                        Standing.CHORD_TONE,
                        () -> Phrase.sentence(
                                "The letter is in the chord, but as {0}. What does {1} do beside it?",
                                tone, about.note()))));
        if (about.key().holds(about.note())) {
            errors.add(new ModelledError<>(
                    KEY_FOR_CHORD,
                    Standing.COLOUR,
                    () -> Phrase.sentence("It belongs to the key; what counts here is the chord.")
                            .then(way(about))));
        }
        return errors;
    }

    private static List<ModelledError<NoteName>> mendErrors(TuneSubject about) {
        return List.of(new ModelledError<>(
                KEY_FOR_CHORD,
                about.note(),
                () -> Phrase.sentence(
                        "{0} belongs to the key, but it is the note that clashes. The chord is {1}.",
                        about.note(), Phrase.row(about.chord().tones()))));
    }

    private static Phrase mendWay(TuneSubject about) {
        return Phrase.sentence(
                "The chord is {0}: look for the nearest to {1}.",
                Phrase.row(about.chord().tones()), about.note());
    }

    /** What to look at, and no name for it. */
    private static Phrase way(TuneSubject about) {
        NoteName note = about.note();
        Phrase spelled = Phrase.sentence(
                "{0} is {1}.", about.chord(), Phrase.row(about.chord().tones()));
        if (about.chord().holds(note)) {
            return spelled.then(Phrase.sentence("Is {0} among them?", note));
        }
        return spelled.then(
                about.falls()
                        ? Phrase.sentence("{0} is not among them: does it give way to one?", note)
                        : Phrase.sentence(
                                "{0} is not among them: how far does it lie above the nearest tone below?", note));
    }

    private static Phrase reason(TuneSubject about) {
        NoteName note = about.note();
        Phrase row = Phrase.row(about.chord().tones());
        return switch (about.standing()) {
            case CHORD_TONE -> Phrase.sentence("{0} is {1}; {2} is one of its tones.", about.chord(), row, note);
            case COLOUR ->
                Phrase.sentence(
                        "{0} is {1}; {2} rubs against none of its tones from above, so it colours the chord.",
                        about.chord(), row, note);
            case TENSE -> Phrase.sentence("{0} is {1}; {2} colours it with an edge.", about.chord(), row, note);
            case SUSPENSION_ONLY ->
                Phrase.sentence(
                        "{0} is {1}; {2} is the fourth over a major third: a suspension, to be let fall, not to rest on.",
                        about.chord(), row, note);
            case CLASH ->
                Phrase.sentence(
                        "{0} is {1}; {2} is none of its tones and rubs against one of them: a clash.",
                        about.chord(), row, note);
        };
    }

    /** Whether it is a tone of the chord comes first; what it does beside the chord, only where it is none. */
    private static List<Phrase> help(Standing given, TuneSubject about) {
        NoteName note = about.note();
        Chord chord = about.chord();
        Phrase spelled = Phrase.sentence("{0} is {1}.", chord, Phrase.row(chord.tones()));
        boolean isTone = chord.holds(note);
        if (isTone || given == Standing.CHORD_TONE) {
            return List.of(
                    Phrase.sentence("Spell {0} to its end, and look for {1}, accidental and all.", chord, note),
                    spelled,
                    way(about));
        }
        Phrase none = Phrase.sentence("{0} is none of the tones of {1}, that is right.", note, chord);
        return about.falls()
                ? List.of(
                        none.then(Phrase.sentence("Now see where the tune goes from it.")),
                        Phrase.sentence("It falls to {0}. Is that a tone of {1}?", about.below(), chord),
                        spelled.then(
                                Phrase.sentence(
                                        "A note that gives way to a tone of the chord is one thing; one that stays and rubs is another.")))
                : List.of(
                        none.then(Phrase.sentence("Now see how near it lies above one of them.")),
                        spelled,
                        Phrase.sentence(
                                "Measure from the nearest tone below {0}: a half step rubs, a whole step does not.",
                                note));
    }

    private static List<Phrase> mendHelp(NoteName given, TuneSubject about) {
        Chord chord = about.chord();
        return List.of(
                chord.holds(given)
                        ? Phrase.sentence(
                                "{0} is a tone of {1}, that is right. Another one lies nearer to {2}.",
                                given, chord, about.note())
                        : Phrase.sentence("{0} is no tone of {1}. Spell the chord.", given, chord),
                Phrase.sentence("{0} is {1}.", chord, Phrase.row(chord.tones())),
                Phrase.sentence("Which of them lies a half step or a whole step from {0}?", about.note()));
    }

    private static Coaching coaching(TuneSubject about) {
        Phrase row = Phrase.row(about.chord().tones());
        NoteName note = about.note();
        return Coaching.of(
                Phrase.sentence("Spell the chord first."),
                Phrase.sentence("{0} is {1}.", about.chord(), row),
                Phrase.sentence(
                        "{0} is {1}. Is {2} one of them, accidental and all? If not, does it lie a half step above one?",
                        about.chord(), row, note),
                reason(about).then(Phrase.sentence("That is custom, so trust your ear too.")));
    }

    private static Coaching mendCoaching(TuneSubject about, Phrase reason) {
        return Coaching.of(
                Phrase.sentence("Spell the chord first."),
                Phrase.sentence(
                        "{0} is {1}.", about.chord(), Phrase.row(about.chord().tones())),
                Phrase.sentence(
                        "Look for the tone of {0} nearest to {1}.",
                        Phrase.row(about.chord().tones()), about.note()),
                reason.then(Phrase.sentence("Whether the tune may change is for the band to say.")));
    }
}
