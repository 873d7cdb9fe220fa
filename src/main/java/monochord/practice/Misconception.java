package monochord.practice;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import monochord.text.Phrase;

/**
 * A wrong procedure. Each skill runs those that could happen there and compares what they give with the answer.
 *
 * <p>Sources: the error of leaving the root of a borrowed chord unaltered, Integrated Music Theory (open university
 * course text), lesson 16a; errors with intervals, Open Music Theory (2014); the others common teaching experience, no
 * source.
 */
public enum Misconception {
    SPELLED_BY_SOUND(
            Phrase.of("spelled by sound, not by letter"),
            Phrase.sentence("The key on the piano is right; the name has to come from the letter that is due.")),
    LETTER_REPEATED(
            Phrase.of("a letter twice in a scale"), Phrase.sentence("A scale of seven notes uses each letter once.")),
    NOT_LOWERED(
            Phrase.of("the degree not lowered"),
            Phrase.sentence("A flat in front of a degree says: a half step below the degree of the major scale.")),
    ROOT_ONLY(
            Phrase.of("only the root lowered"),
            Phrase.sentence("When the root comes down, the other tones follow the chord's own quality, not the key.")),
    ROOT_LOWERED(
            Phrase.of("the root lowered where no flat stands"),
            Phrase.sentence(
                    "No flat stands in front, so the root is the key's own; only a tone inside the chord moves.")),
    LOWERED_TOO_FAR(Phrase.of("lowered too far"), Phrase.sentence("Lowered means one half step, no more.")),
    QUALITY_OF_THE_KEY(
            Phrase.of("the quality of the key for that of the chord"),
            Phrase.sentence(
                    "A chord has a quality of its own: its degree or its numeral says it, not the key as a whole.")),
    WRONG_QUALITY(
            Phrase.of("another quality"), Phrase.sentence("The half steps between the tones decide the quality.")),
    WRONG_DEGREE(
            Phrase.of("another degree"),
            Phrase.sentence("The tonic counts as 1; from there each letter is one degree.")),
    COUNTED_FROM_ZERO(
            Phrase.of("counted from nought"),
            Phrase.sentence("Degrees and intervals count the note you start on as 1.")),
    COUNTED_THE_START(
            Phrase.of("the start counted as a step"),
            Phrase.sentence("Steps are moves: the key you stand on is nought.")),
    RELATIVE_FOR_PARALLEL(
            Phrase.of("relative taken for parallel"),
            Phrase.sentence("Parallel means the same tonic; the relative has the same signature and another tonic.")),
    PARALLEL_FOR_RELATIVE(
            Phrase.of("parallel taken for relative"),
            Phrase.sentence(
                    "Major and minor on one tonic have different signatures: a minor key takes that of its relative major, a minor third higher.")),
    SIGNATURE_FORGOTTEN(
            Phrase.of("the key signature forgotten"),
            Phrase.sentence("The key signature counts for every note that the accidental in front does not change.")),
    LAST_SIGN_FOR_TONIC(
            Phrase.of("the last sign taken for the tonic"),
            Phrase.sentence("The last sharp is the seventh degree, the last flat is the fourth.")),
    SHARPS_FOR_FLATS(
            Phrase.of("sharps and flats exchanged"),
            Phrase.sentence("Going up by fifths adds sharps, going down by fifths adds flats.")),
    WRONG_DEGREE_RAISED(
            Phrase.of("another degree raised"),
            Phrase.sentence(
                    "Harmonic minor raises the seventh alone; melodic minor going up raises sixth and seventh.")),
    NOT_RAISED(
            Phrase.of("the raised degree left low"),
            Phrase.sentence("The signature of a minor key leaves the seventh low; the raised note is written in.")),
    OTHER_SCALE(
            Phrase.of("another scale"), Phrase.sentence("Check the scale's own steps, one by one, from the tonic.")),
    WRONG_SOURCE(
            Phrase.of("a scale that lacks a tone of the chord"),
            Phrase.sentence("A scale is the source only if it holds every tone of the chord.")),
    WRONG_BASS(
            Phrase.of("another bass note"),
            Phrase.sentence("The name of a chord says what lies lowest: its root, or the note behind the slash.")),
    BASS_FOR_ROOT(
            Phrase.of("the bass taken for the root"),
            Phrase.sentence(
                    "Stack the notes in thirds; the lowest of the stack is the root, whatever lies in the bass.")),
    MISSING_NOTE(Phrase.of("a note left out"), Phrase.sentence("Count again: something has been left out.")),
    EXTRA_NOTE(
            Phrase.of("a note too many"),
            Phrase.sentence("Count again: nothing may stand there that was not asked for.")),
    HANDS_CROSSED(
            Phrase.of("hands crossed"),
            Phrase.sentence("The left hand plays below the right; where they cross, they are in each other's way.")),
    OUT_OF_REACH(
            Phrase.of("out of reach of a hand"),
            Phrase.sentence(
                    "A hand takes five notes and an octave; what lies wider is rolled or given to the other hand.")),
    TOO_LOW(
            Phrase.of("close together down low"),
            Phrase.sentence("The lower the notes, the further apart they have to lie.")),
    DOUBLED_TENDENCY(
            Phrase.of("a tone doubled that wants to move on"),
            Phrase.sentence("A tone that wants to move on sounds once: leading notes, sevenths, colours.")),
    THIRD_KEPT(
            Phrase.of("the third kept beside the suspension"),
            Phrase.sentence("A suspended note stands in place of the third.")),
    SLASH_FOR_BASS(
            Phrase.of("the slash of a numeral taken for a bass"),
            Phrase.sentence("In a numeral the slash says of; in a chord symbol it names the bass.")),
    STOOD_STILL(
            Phrase.of("a next chord that does not move"),
            Phrase.sentence("A next chord moves: another root, or a third that changes the light.")),
    WRONG_SEVENTH(Phrase.of("another seventh"), Phrase.sentence("Measure the seventh from the root, in half steps.")),
    WRONG_WAY(
            Phrase.of("up and down exchanged"),
            Phrase.sentence("Up and down are not the same way: check the direction first.")),
    LETTERS_ONLY(
            Phrase.of("letters without their accidentals"),
            Phrase.sentence("Letters alone are not enough: each takes the accidental that the distance asks for.")),
    OTHER_VOICES(
            Phrase.of("other voices compared"),
            Phrase.sentence("Find the two voices that were asked for before you compare them.")),
    DIRECTION_ONLY(
            Phrase.of("the same direction taken for parallel"),
            Phrase.sentence("The same way is not yet parallel: the interval has to keep its number too.")),
    HALF_STEPS_COUNTED(
            Phrase.of("half steps counted where letters count"),
            Phrase.sentence("Parallel goes by letters: a major third and a minor third are both thirds.")),
    KEY_FOR_CHORD(
            Phrase.of("a note of the key taken for one of the chord"),
            Phrase.sentence("That a note belongs to the key does not yet make it fit the chord under it.")),
    TURNED_OVER(
            Phrase.of("the interval turned over"),
            Phrase.sentence(
                    "The same two notes the other way up are another interval: find the lower one first, then the upper.")),
    OCTAVE_OFF(
            Phrase.of("an octave off"),
            Phrase.sentence("Bring both notes into your own octave and name what is left; then count the octaves.")),
    SIZE_MISHEARD(
            Phrase.of("a neighbouring interval heard"),
            Phrase.sentence(
                    "Neighbours among the intervals lie a half step apart: sing the wider and the narrower, and compare.")),
    STEPS_MISCOUNTED(
            Phrase.of("steps miscounted"),
            Phrase.sentence("Sing up the scale from the lower note, counting it as 1, until you meet the upper one.")),
    THIRD_MISHEARD(
            Phrase.of("the third misheard"),
            Phrase.sentence("Sing the root, then the third above it: four half steps are bright, three are dark.")),
    FIFTH_MISHEARD(
            Phrase.of("the fifth misheard"),
            Phrase.sentence(
                    "Sing root and fifth alone: a perfect fifth rests, one that is narrowed or widened does not.")),
    NEIGHBOUR_FOR_BORROWED(
            Phrase.of("the chord of the key heard for the borrowed one"),
            Phrase.sentence(
                    "Sing the key's own note where the bass steps: a borrowed chord has it, or its third, lowered.")),
    TONES_SHARED(
            Phrase.of("a chord heard that shares two tones"),
            Phrase.sentence(
                    "Two chords that share two tones sound alike from above: follow the bass, it tells them apart.")),
    BASS_WITHOUT_QUALITY(
            Phrase.of("the bass heard, the quality not"),
            Phrase.sentence(
                    "The bass gives the degree; then sing up to the third, and hear whether it is bright or dark.")),
    QUALITY_WITHOUT_BASS(
            Phrase.of("the quality heard, the bass not"),
            Phrase.sentence(
                    "The light of a chord does not say where it stands: sing the bass and count from the tonic.")),
    WRONG_KEY(Phrase.of("another key"), Phrase.sentence("Say the key first, then count from its tonic."));

    private final Phrase words;
    private final Phrase rule;

    Misconception(Phrase words, Phrase rule) {
        this.words = words;
        this.rule = rule;
    }

    /** The one with this id, if there is one; none for null. */
    public static Optional<Misconception> find(String id) {
        return Arrays.stream(values()).filter(one -> one.id().equals(id)).findFirst();
    }

    /** As scripts read it: {@code spelled-by-sound}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What somebody did who follows it, in a few words for a list. */
    public Phrase words() {
        return words;
    }

    /** The rule that the procedure breaks, in a sentence. */
    public Phrase rule() {
        return rule;
    }
}
