package monochord.notebook;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What was typed at one prompt, and what came back.
 *
 * <p>Text form: the first typed line behind {@code ▸}, those that continue it behind {@code ▹}, then the answer as it was
 * shown in 80 columns, with music signs and without colour. The command that opened the prompt stands behind {@code $}.
 *
 * @param line where it begins in its file, from 1; 0 if it comes from none
 * @param isOpening whether it is the command that opened the prompt, and the greeting
 * @param typed without its marks, one line at least
 * @param answer its lines, parted by line feeds, perhaps none
 */
public record Exchange(int line, boolean isOpening, List<String> typed, String answer) {
    static final char MARK = '▸';
    static final char CONTINUED = '▹';
    static final char SHELL = '$';

    /** @throws IllegalArgumentException if nothing is typed */
    public Exchange {
        typed = List.copyOf(typed);
        if (typed.isEmpty()) {
            throw new IllegalArgumentException("an exchange has a typed line, perhaps an empty one");
        }
    }

    /** @param text one line or several */
    public static Exchange of(String text, String answer) {
        List<String> typed = text.lines().map(String::stripTrailing).collect(Collectors.toList());
        return new Exchange(0, false, typed.isEmpty() ? List.of("") : typed, settled(answer));
    }

    /**
     * An answer as a notebook holds it: no spaces at the ends of its lines, no empty lines at its end, and a line that would
     * read as typed set in by a space.
     */
    public static String settled(String answer) {
        return answer.lines()
                .map(Exchange::settledLine)
                .collect(Collectors.joining("\n"))
                .stripTrailing();
    }

    private static String settledLine(String line) {
        boolean marked = !line.isEmpty() && (line.charAt(0) == MARK || line.charAt(0) == CONTINUED);
        return (marked ? " " + line : line).stripTrailing();
    }

    /** The same with another answer. */
    public Exchange answered(String other) {
        return new Exchange(line, isOpening, typed, settled(other));
    }

    /** What was typed, as the line reads it. */
    public String text() {
        return String.join("\n", typed);
    }

    void write(StringBuilder out) {
        char mark = isOpening ? SHELL : MARK;
        for (String said : typed) {
            out.append((mark + " " + said).stripTrailing()).append('\n');
            mark = CONTINUED;
        }
        if (!answer.isEmpty()) {
            out.append(answer).append('\n');
        }
    }
}
