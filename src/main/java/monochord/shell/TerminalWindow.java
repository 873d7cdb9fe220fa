package monochord.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import monochord.view.Look;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.DumbTerminal;
import org.jline.utils.InfoCmp;
import org.jline.utils.NonBlockingReader;

/** The window that a terminal is shown in, which may be closed or made wider at any moment. */
record TerminalWindow(Terminal terminal, Look look) {
    private static final int USUAL_WIDTH = 80;
    private static final int USUAL_HEIGHT = 24;

    /** The terminal that the program stands in. Without the grapheme question, which costs a round trip and loses keys typed ahead. */
    static Terminal open(String type) throws IOException {
        knowAtOnce(type);
        return sized(TerminalBuilder.builder()
                .provider("jni")
                .graphemeCluster(false)
                .encoding(StandardCharsets.UTF_8)
                .build());
    }

    /** Some containers give a terminal no size, 0 by 0, and then no line would have room: it gets the usual one. */
    static Terminal sized(Terminal terminal) {
        Size size = terminal.getSize();
        if (size.getColumns() <= 0 || size.getRows() <= 0) {
            terminal.setSize(Size.of(
                    size.getColumns() > 0 ? size.getColumns() : USUAL_WIDTH,
                    size.getRows() > 0 ? size.getRows() : USUAL_HEIGHT));
        }
        return terminal;
    }

    /** JLine knows the usual terminals itself, yet asks the system first, which starts a process. */
    private static void knowAtOnce(String type) {
        String known = InfoCmp.getDefaultInfoCmp(type);
        if (known != null) {
            InfoCmp.setLoadedInfoCmp(type, known);
        }
    }

    /** Whether somebody pressed ctrl-D and the window is still there: a sitting whose window was closed is broken off. */
    boolean stands() {
        try {
            return terminal.reader().peek(1) != NonBlockingReader.EOF;
        } catch (IOException | IllegalStateException gone) { // the latter of a terminal that is closed already
            return false;
        }
    }

    /** Whether anything can be drawn in it outside of the lines. */
    boolean draws() {
        return !look.plain()
                && !(terminal instanceof DumbTerminal)
                && !terminal.getType().startsWith("dumb");
    }

    /** How answers look in it now. */
    Look lookNow() {
        int columns = terminal.getSize().getColumns();
        return look.inWidth(columns > 0 ? columns : USUAL_WIDTH);
    }

    int lines() {
        int rows = terminal.getSize().getRows();
        return rows > 0 ? rows : USUAL_HEIGHT;
    }
}
