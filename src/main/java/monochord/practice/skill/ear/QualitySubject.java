package monochord.practice.skill.ear;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.ChordKind;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/**
 * A kind of chord to be heard, and how it is layout out.
 *
 * <p>Text form: {@code kind [ inversion ] [ 'spread' ]}, such as {@code minor}, {@code 7 spread} or {@code major first
 * inversion}. {@link #parse} reads all that {@link #toString} writes.
 *
 * @param inversion which tone lies lowest, 0 for the root
 * @param spread whether the tones lie apart, else close together
 */
record QualitySubject(ChordKind kind, int inversion, boolean spread) {
    private static final String WHAT = "a chord to hear";
    private static final String EXAMPLE = "minor first inversion";
    private static final String SPREAD = "spread";
    private static final List<String> INVERSIONS =
            List.of("root position", "first inversion", "second inversion", "third inversion");

    /** From easy to awkward: the root in the bass first. */
    static final List<String> ALL = List.of(
            "major",
            "minor",
            "sus4",
            "diminished",
            "augmented",
            "dominant seventh",
            "major seventh",
            "minor seventh",
            "half-diminished seventh",
            "sus2",
            "diminished seventh",
            "major spread",
            "minor spread",
            "major first inversion",
            "minor first inversion",
            "major second inversion",
            "minor second inversion",
            "dominant seventh spread",
            "major seventh spread",
            "minor seventh spread",
            "dominant seventh first inversion",
            "dominant seventh third inversion");

    /** @throws Unreadable if it is no kind of chord that is asked, or it has no such inversion */
    static QualitySubject parse(String subject) {
        String text = subject.strip().replaceAll(" +", " ");
        boolean spread = text.toLowerCase(Locale.ROOT).endsWith(" " + SPREAD);
        String rest = spread ? text.substring(0, text.length() - SPREAD.length() - 1) : text;
        int inversion = 0;
        for (int i = 0; i < INVERSIONS.size(); i++) {
            if (rest.toLowerCase(Locale.ROOT).endsWith(" " + INVERSIONS.get(i))) {
                inversion = i;
                rest = rest.substring(0, rest.length() - INVERSIONS.get(i).length() - 1);
            }
        }
        return new QualitySubject(kind(rest, inversion, subject), inversion, spread);
    }

    private static ChordKind kind(String text, int inversion, String subject) {
        Optional<ChordKind> kind = KindNames.kind(text).filter(KindNames.kinds()::contains);
        if (kind.isEmpty() || inversion >= kind.get().intervals().size()) {
            String names = String.join(
                    ", ", KindNames.kinds().stream().map(KindNames::write).toList());
            Clause why = kind.isEmpty()
                    ? Clause.of("the kinds are {0}", names)
                    : Clause.of("it has no {0}", INVERSIONS.get(inversion));
            throw Unreadable.because(subject, 0, WHAT, why, EXAMPLE);
        }
        return kind.get();
    }

    /** {@code first inversion}. */
    String position() {
        return INVERSIONS.get(inversion);
    }

    /** The same for a sentence. */
    Phrase positionInWords() {
        return switch (inversion) {
            case 0 -> Phrase.of("root position");
            case 1 -> Phrase.of("first inversion");
            case 2 -> Phrase.of("second inversion");
            default -> Phrase.of("third inversion");
        };
    }

    QualitySubject with(ChordKind other) {
        return new QualitySubject(other, Math.min(inversion, other.intervals().size() - 1), spread);
    }

    @Override
    public String toString() {
        return KindNames.write(kind) + (inversion == 0 ? "" : " " + position()) + (spread ? " " + SPREAD : "");
    }
}
