package monochord.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Fingering;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** The words that may stand between <code>${</code> and <code>}</code>: everything a lesson may know of the key. */
enum Fill {
    KEY("", (key, none) -> said(key)),
    TONIC("", (key, none) -> said(key.tonic())),
    DEGREE("b6", (key, degree) -> said(key.note(Degree.parse(degree)))),
    SCALE("harmonic minor", (key, kind) -> Phrase.row(scale(key, kind).tones())),
    CHORD("bVI", (key, numeral) -> said(Numeral.parse(numeral).in(key))),
    NOTES("bVI", (key, numeral) -> Phrase.row(Numeral.parse(numeral).in(key).tones())),
    NUMBER(
            "bVI",
            (key, numeral) ->
                    Phrase.typed(BandNumber.write(Numeral.parse(numeral).in(key), key, Signs.MUSIC))),
    SIGNATURE("", (key, none) -> signature(key)),
    /** Alone the name of the relative minor; before another fill, that one in the relative minor. */
    RELATIVE("tonic", Fill::relative),
    PARALLEL("", (key, none) -> said(key.parallel())),
    /** The usual fingers of a hand for one octave up of a scale on the tonic. */
    FINGERS("right", Fill::fingers),
    /** Letters that look like the name of a note and are none. */
    TEXT("A", (key, letters) -> Phrase.typed(letters));

    private static final List<String> HANDS = List.of("left", "right");

    private final String argument;
    private final Rule rule;

    /** What a word and its argument read as in a key. */
    private interface Rule {
        Phrase apply(Key key, String argument);
    }

    Fill(String argument, Rule rule) {
        this.argument = argument;
        this.rule = rule;
    }

    static Optional<Fill> named(String word) {
        return Stream.of(values()).filter(fill -> fill.word().equals(word)).findFirst();
    }

    static List<String> words() {
        return Stream.of(values()).map(Fill::word).toList();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The word with an argument that can be read, as it is written in a lesson. */
    String example() {
        return "${" + (word() + " " + argument).strip() + "}";
    }

    boolean takes(String given) {
        return given.isEmpty() ? argument.isEmpty() || this == SCALE || this == RELATIVE : !argument.isEmpty();
    }

    /** @throws Unreadable if the argument cannot be read */
    Phrase in(Key key, String given) {
        return rule.apply(key, given);
    }

    private static Phrase relative(Key key, String fill) {
        if (fill.isEmpty()) {
            return said(key.relative());
        }
        String word = fill.split(" ", 2)[0];
        String argument = fill.substring(word.length()).strip();
        return named(word)
                .filter(named -> named.takes(argument) && named != RELATIVE)
                .map(named -> named.in(key.relative(), argument))
                .orElseThrow(() -> Unreadable.because(
                        fill, 0, "a fill", Clause.of("expected another fill behind it"), "${relative chord iv}"));
    }

    private static Phrase fingers(Key key, String argument) {
        String hand = argument.split(" ", 2)[0];
        Scale scale = scale(key, argument.substring(hand.length()).strip());
        if (!HANDS.contains(hand)) {
            throw refused(argument, Clause.of("expected left or right first"));
        }
        Fingering fingering = Fingering.of(scale)
                .orElseThrow(() -> refused(argument, Clause.of("no fingers are known here for such a scale")));
        List<Integer> fingers = hand.equals("right") ? fingering.right() : fingering.left();
        return Phrase.joined(
                " ", fingers.stream().map(finger -> Phrase.of("{0}", finger)).toList());
    }

    private static Unreadable refused(String argument, Clause why) {
        return Unreadable.because(argument, 0, "a fill", why, "${fingers right}");
    }

    private static Scale scale(Key key, String kind) {
        return kind.isEmpty() ? key.scale() : new Scale(key.tonic(), ScaleKind.parse(kind));
    }

    private static Phrase said(Object music) {
        return Phrase.of("{0}", music);
    }

    private static Phrase signature(Key key) {
        int count = Math.abs(key.signature());
        return count == 0
                ? Phrase.of("no sharps or flats")
                : Phrase.of("{0}, {1}", signs(key, count), Phrase.list(key.signatureNotes()));
    }

    private static Phrase signs(Key key, int count) {
        return key.signature() > 0
                ? Phrase.counted(count, "{0} sharp", "{0} sharps", Phrase.number(count))
                : Phrase.counted(count, "{0} flat", "{0} flats", Phrase.number(count));
    }
}
