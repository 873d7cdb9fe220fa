package monochord.lesson;

import static monochord.theory.Signs.MUSIC;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.theory.BandNumber;
import monochord.theory.Degree;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.Unreadable;

/** The words that may stand between <code>${</code> and <code>}</code>: everything a lesson may know of the key. */
enum Fill {
    KEY("", (key, none) -> key.write(MUSIC)),
    TONIC("", (key, none) -> key.tonic().write(MUSIC)),
    DEGREE("b6", (key, degree) -> key.note(Degree.parse(degree)).write(MUSIC)),
    SCALE("harmonic minor", (key, kind) -> notes(scale(key, kind).tones())),
    CHORD("bVI", (key, numeral) -> Numeral.parse(numeral).in(key).write(MUSIC)),
    NOTES("bVI", (key, numeral) -> notes(Numeral.parse(numeral).in(key).tones())),
    NUMBER("bVI", (key, numeral) -> BandNumber.write(Numeral.parse(numeral).in(key), key, MUSIC)),
    SIGNATURE("", (key, none) -> signature(key)),
    RELATIVE("", (key, none) -> key.relative().write(MUSIC)),
    PARALLEL("", (key, none) -> key.parallel().write(MUSIC));

    private static final List<String> COUNTS = List.of("no", "one", "two", "three", "four", "five", "six", "seven");

    private final String argument;
    private final Rule rule;

    /** What a word and its argument read as in a key. */
    private interface Rule {
        String apply(Key key, String argument);
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
        return given.isEmpty() ? argument.isEmpty() || this == SCALE : !argument.isEmpty();
    }

    /** @throws Unreadable if the argument cannot be read */
    String in(Key key, String given) {
        return rule.apply(key, given);
    }

    private static Scale scale(Key key, String kind) {
        return kind.isEmpty() ? key.scale() : new Scale(key.tonic(), ScaleKind.parse(kind));
    }

    private static String notes(List<NoteName> names) {
        return names.stream().map(name -> name.write(MUSIC)).collect(Collectors.joining(" "));
    }

    private static String signature(Key key) {
        List<String> signs =
                key.signatureNotes().stream().map(name -> name.write(MUSIC)).toList();
        int count = signs.size();
        if (count == 0) {
            return "no sharps or flats";
        }
        String kind = key.signature() > 0 ? "sharp" : "flat";
        String head = COUNTS.get(count) + " " + kind + (count == 1 ? ", " : "s, ");
        String most = String.join(", ", signs.subList(0, count - 1));
        return head + most + (count == 1 ? "" : " and ") + signs.get(count - 1);
    }
}
