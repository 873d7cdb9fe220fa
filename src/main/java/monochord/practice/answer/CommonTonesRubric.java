package monochord.practice.answer;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import monochord.harmony.motion.VoiceLeading;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.NoteReading;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;

/** Judges the notes that two chords share, in any order; {@code none} is an answer too. */
public final class CommonTonesRubric extends Rubric<List<NoteName>> {
    private static final String NONE = "none";
    private static final Set<String> NOTHING = Set.of(NONE, "no", "nothing", "no common tones", "no tones", "0");

    private final Chord first;
    private final Chord second;

    public CommonTonesRubric(Chord first, Chord second, Supplier<List<Slip<List<NoteName>>>> slips) {
        super(VoiceLeading.commonTones(first, second), slips);
        this.first = first;
        this.second = second;
    }

    @Override
    List<NoteName> read(String text) {
        String example = example("C G", "F A");
        String plain = AnswerText.plain(text, "a row of notes", example);
        return NOTHING.contains(plain.toLowerCase(Locale.ROOT)) ? List.of() : NoteReading.read(plain, example);
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
        return new HashSet<>(Difference.keys(notes));
    }

    /** Every black key under its other name. */
    @Override
    Optional<List<NoteName>> bySound() {
        List<NoteName> respelled = wanted().stream()
                .map(note -> note.alteration() == 0 ? note : note.respelled())
                .toList();
        return respelled.equals(wanted()) ? Optional.empty() : Optional.of(respelled);
    }

    @Override
    Grade grade(List<NoteName> given) {
        return given.stream().anyMatch(wanted()::contains) ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict accept(List<NoteName> given) {
        return verdict(Grade.RIGHT, wanted().isEmpty() ? "Yes, none: " + sideBySide() : "Yes: " + sideBySide());
    }

    private String sideBySide() {
        return Say.chord(first) + " is " + Say.row(first.tones()) + ", " + Say.chord(second) + " is "
                + Say.row(second.tones()) + ".";
    }

    @Override
    Verdict otherwise(List<NoteName> given) {
        if (soundsRight(given)) {
            return verdict(
                    Grade.NEARLY,
                    Misconception.SPELLED_BY_SOUND,
                    "The right keys on the piano, under other letters than the chords have them. Spell both.");
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
                        ? "They do share something. Spell " + Say.chord(first) + " and look for each of its notes in "
                                + Say.chord(second) + "."
                        : Say.areRight(given) + ", and there is more. Go on through " + Say.chord(first)
                                + " note by note.");
    }

    private Verdict strange(List<NoteName> given, NoteName stranger) {
        Chord without = first.holds(stranger) ? second : first;
        String message =
                Say.chord(without) + " has no " + Say.note(stranger) + ": it is " + Say.row(without.tones()) + ".";
        boolean rest = given.containsAll(wanted());
        return rest ? verdict(grade(given), Misconception.EXTRA_NOTE, message) : verdict(grade(given), message);
    }
}
