package monochord.lesson.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.lesson.PlacedText;
import monochord.lesson.Trouble;
import monochord.text.Phrase;

/** A name, a colon and a value, on one line. */
public record Field(String name, SourceLine line, PlacedText value) {
    private static final Pattern FORM = Pattern.compile("\\s*([\\p{L}\\w-]+)\\s*:(.*)");

    /** Whether a line has the form of a field, whatever its name. */
    public static boolean looksLike(SourceLine line) {
        return FORM.matcher(line.text()).matches();
    }

    /** @param names those that may stand there
     * @param kind what such a line is called where it stands */
    public static Optional<Field> read(SourceLine line, List<String> names, Phrase kind, Faults faults) {
        Matcher field = FORM.matcher(line.text());
        int start = line.whole().place();
        if (!field.matches()) {
            faults.at(
                    line.number(),
                    line.column(start),
                    Phrase.of("this line is no {0}", kind),
                    Phrase.of("write a name, a colon and a value"));
            return Optional.empty();
        }
        if (!names.contains(field.group(1))) {
            faults.in(line, 0, Trouble.unknown(start, kind, field.group(1), names));
            return Optional.empty();
        }
        PlacedText value = new PlacedText(line.text(), 0)
                .part(field.start(2), field.end(2))
                .stripped();
        return Optional.of(new Field(field.group(1), line, value));
    }

    public static void put(Map<String, Field> fields, Field field, Faults faults) {
        if (fields.putIfAbsent(field.name, field) != null) {
            int column = field.line.column(field.line.whole().place());
            faults.at(
                    field.line.number(),
                    column,
                    Phrase.of("{0} is said twice", Phrase.typed(field.name)),
                    Phrase.of("leave one out"));
        }
    }

    public void fault(Phrase what, Phrase instead, Faults faults) {
        faults.in(line, value.place(), new Trouble(0, what, instead));
    }
}
