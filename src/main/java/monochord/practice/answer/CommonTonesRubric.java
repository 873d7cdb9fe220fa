package monochord.practice.answer;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.harmony.motion.VoiceLeading;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.NoteReading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;

/** Judges the notes that two chords share, in any order; {@code none} is an answer too. */
public final class CommonTonesRubric extends Rubric<List<NoteName>> {
    private static final String NONE = "none";
    private static final Pattern NOTHING = Pattern.compile(
            "(?i)none|nothing|0|(?:don't|do not|not) any(?:thing)?(?: in common)?|no(?:ne)?(?: common| shared)?(?: tones?)?(?: in common)?");

    private final Chord first;
    private final Chord second;

    public CommonTonesRubric(Chord first, Chord second, Supplier<List<ModelledError<List<NoteName>>>> errors) {
        super(VoiceLeading.commonTones(first, second), errors);
        this.first = first;
        this.second = second;
    }

    @Override
    String what() {
        return "a row of notes";
    }

    @Override
    String example() {
        return example("C G", "F A");
    }

    @Override
    List<NoteName> read(String plain) {
        return NOTHING.matcher(plain.replaceAll("\\s+", " ")).matches()
                ? List.of()
                : NoteReading.read(plain, example());
    }

    @Override
    String write(List<NoteName> answer) {
        return answer.isEmpty() ? NONE : answer.stream().map(NoteName::toString).collect(Collectors.joining(" "));
    }

    @Override
    boolean same(List<NoteName> one, List<NoteName> other) {
        return asSpelledFirst(one).equals(asSpelledFirst(other));
    }

    /** Either chord's spelling of a key will do. */
    private Set<NoteName> asSpelledFirst(List<NoteName> notes) {
        Set<NoteName> spelled = new HashSet<>();
        for (NoteName note : notes) {
            boolean ofSecond = second.holds(note);
            spelled.add(wanted().stream()
                    .filter(tone -> ofSecond && tone.soundsLike(note))
                    .findFirst()
                    .orElse(note));
        }
        return spelled;
    }

    @Override
    boolean soundsRight(List<NoteName> given) {
        return keys(given).equals(keys(wanted()));
    }

    private static Set<Integer> keys(List<NoteName> notes) {
        return new HashSet<>(NoteDifference.keys(notes));
    }

    /** Every black key under its other name. */
    @Override
    Optional<List<NoteName>> bySound() {
        List<NoteName> respelled = wanted().stream().map(OtherSpelling::of).toList();
        return respelled.equals(wanted()) ? Optional.empty() : Optional.of(respelled);
    }

    @Override
    Grade grade(List<NoteName> given) {
        return given.stream().anyMatch(wanted()::contains) ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict accept(List<NoteName> given) {
        return verdict(
                Grade.RIGHT,
                wanted().isEmpty()
                        ? Phrase.sentence("Yes, none: {0}", sideBySide(first, second))
                        : Phrase.sentence("Yes: {0}", sideBySide(first, second)));
    }

    /** Both chords with their notes, as a clause with its full stop. */
    public static Phrase sideBySide(Chord first, Chord second) {
        return Phrase.of(
                "{0} is {1}, {2} is {3}.", first, Phrase.row(first.tones()), second, Phrase.row(second.tones()));
    }

    @Override
    Verdict otherwise(List<NoteName> given) {
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    Phrase.sentence(
                            "The right keys on the piano, under other letters than the chords have them. Spell both."));
        }
        List<NoteName> strangers =
                given.stream().filter(note -> !isShared(note)).toList();
        return strangers.isEmpty() ? missing(given) : strange(given, strangers.get(0));
    }

    private boolean isShared(NoteName note) {
        return same(List.of(note), wanted().stream().filter(note::soundsLike).toList());
    }

    private Verdict missing(List<NoteName> given) {
        return verdict(
                given.isEmpty() ? Grade.WRONG : Grade.NEARLY,
                Misconception.MISSING_NOTE,
                given.isEmpty()
                        ? Phrase.sentence(
                                "They do share something. Spell {0} and look for each of its notes in {1}.",
                                first, second)
                        : more(given, first));
    }

    /** {@code C is right, and there is more}. */
    public static Phrase more(List<NoteName> given, Chord first) {
        return Phrase.sentence(
                "{0}, and there is more. Go on through {1} note by note.", NoteDifference.areRight(given), first);
    }

    private Verdict strange(List<NoteName> given, NoteName stranger) {
        Chord without = first.holds(stranger) ? second : first;
        Phrase message = Phrase.sentence("{0} has no {1}: it is {2}.", without, stranger, Phrase.row(without.tones()));
        boolean rest = given.containsAll(wanted());
        return rest ? verdict(grade(given), Misconception.EXTRA_NOTE, message) : verdict(grade(given), message);
    }

    @Override
    List<Phrase> helpFrom(List<NoteName> given) {
        List<NoteName> shared = given.stream().filter(this::isShared).distinct().toList();
        if (shared.isEmpty() || soundsRight(given)) {
            return List.of();
        }
        Phrase begun = shared.containsAll(wanted())
                ? Phrase.sentence("All they share is there, and more than that. Which of yours is not in both?")
                : Phrase.sentence("{0}.", NoteDifference.areRight(shared))
                        .then(Phrase.sentence("Go through {0} note by note.", first));
        return List.of(
                begun,
                Phrase.sentence("{0} is {1}.", first, Phrase.row(first.tones())),
                Phrase.sentence("{0}", sideBySide(first, second)));
    }
}
