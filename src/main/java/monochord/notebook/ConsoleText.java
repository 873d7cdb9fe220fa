package monochord.notebook;

import java.util.ArrayList;
import java.util.List;
import monochord.lesson.read.Faults;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;

/** Reads the lines of one block into exchanges. */
final class ConsoleText {
    private final List<Exchange> exchanges = new ArrayList<>();
    private final List<String> typed = new ArrayList<>();
    private final StringBuilder answer = new StringBuilder();
    private boolean opening;
    private boolean answering;
    private int line;

    private ConsoleText() {}

    static List<Exchange> read(List<SourceLine> lines, Faults faults) {
        ConsoleText text = new ConsoleText();
        boolean faulty = false;
        for (SourceLine line : lines) {
            boolean read = text.take(line, line == lines.get(0));
            if (!read && !faulty) {
                faulty = true;
                faults.at(
                        line.number(),
                        1,
                        Phrase.of("nothing was typed above this line"),
                        Phrase.of("begin it with ▸ and what was typed"));
            }
        }
        text.close();
        return text.exchanges;
    }

    /** @return false for a line that belongs to no exchange */
    private boolean take(SourceLine line, boolean first) {
        String said = line.text();
        if (first && starts(said, Exchange.SHELL) || starts(said, Exchange.MARK)) {
            close();
            opening = starts(said, Exchange.SHELL);
            this.line = line.number();
            typed.add(behindMark(said));
        } else if (typed.isEmpty()) {
            return line.isBlank();
        } else if (!answering && starts(said, Exchange.CONTINUED)) {
            typed.add(behindMark(said));
        } else {
            answering = true;
            answer.append(said).append('\n');
        }
        return true;
    }

    private static boolean starts(String line, char mark) {
        return !line.isEmpty() && line.charAt(0) == mark && (line.length() == 1 || line.charAt(1) == ' ');
    }

    private static String behindMark(String line) {
        return line.substring(Math.min(2, line.length())).stripTrailing();
    }

    private void close() {
        if (!typed.isEmpty()) {
            exchanges.add(new Exchange(line, opening, typed, answer.toString().stripTrailing()));
        }
        typed.clear();
        answer.setLength(0);
        answering = false;
    }
}
