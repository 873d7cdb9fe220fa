package monochord.shell;

import java.time.Instant;
import java.util.HashMap;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jline.keymap.KeyMap;
import org.jline.reader.Binding;
import org.jline.reader.Macro;
import org.jline.reader.Reference;
import org.jline.reader.impl.LineReaderImpl;
import org.jline.reader.impl.history.DefaultHistory;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.InfoCmp;

/**
 * The line editor, with a strip under the line that may change at any moment from any thread, and with a hush: while
 * something sounds, the first key stops it.
 *
 * <p>The strip stands where lists of completions stand, and gives way to them: so what is typed is never touched, only
 * what changed is written, and the strip goes when the line is done.
 */
final class PromptReader extends LineReaderImpl {
    private static final String ESCAPE = "\33";
    private static final String DO_NOTHING = "do-nothing";

    /** Keys that say no more than enough, on an empty line. */
    private static final Set<String> ONLY_STOP = Set.of("\r", "\n", " ", ESCAPE);

    /** A lone escape is told from the beginning of a longer key by the silence behind it. */
    private static final long QUICK_MILLIS = 25;

    private final BooleanSupplier sounds;
    private final Runnable hush;
    private final IntPredicate wholeLine;
    private boolean isEntering;
    private Supplier<AttributedString> strip;
    private Supplier<AttributedString> row = () -> AttributedString.EMPTY;
    private Supplier<AttributedString> drawn;
    private UnaryOperator<String> asRemembered = line -> line;
    private boolean leaving;

    /**
     * @param sounds whether something sounds
     * @param hush stops it
     * @param wholeLine whether that digit, typed alone, is all there is to say, so that it needs no Enter
     */
    PromptReader(Terminal terminal, BooleanSupplier sounds, Runnable hush, IntPredicate wholeLine) {
        super(terminal, "monochord", new HashMap<>());
        this.sounds = sounds;
        this.hush = hush;
        this.wholeLine = wholeLine;
        setHistory(new NamelessHistory());
        getWidgets().put(DO_NOTHING, () -> true);
        getKeyMaps().get(EMACS).bind(new Reference(DO_NOTHING), ESCAPE);
    }

    /** Remembers lines as this makes them, for what is called out in a class has somebody's name before it. */
    void remember(UnaryOperator<String> remembered) {
        asRemembered = remembered;
    }

    /** The lines that come back with the arrow keys. */
    private final class NamelessHistory extends DefaultHistory {
        @Override
        public void add(Instant time, String line) {
            super.add(time, asRemembered.apply(line));
        }
    }

    /** Shows this under the line from now on, each time anew; nothing if null. */
    void show(Supplier<AttributedString> under) {
        lock.lock();
        try {
            strip = under;
            if (reading) {
                redisplay(true);
            }
        } finally {
            lock.unlock();
        }
    }

    /** Says this under the line where nothing else is drawn there; asked for each time the line is drawn. */
    void showBelow(Supplier<AttributedString> said) {
        row = said;
    }

    /** The strip where there is one, else the row. */
    private AttributedString below() {
        AttributedString drawing = strip == null ? AttributedString.EMPTY : strip.get();
        return drawing.length() == 0 ? row.get() : drawing;
    }

    /** Puts this line in place of what was typed so far, which is given back; nothing if no line is being read. */
    Optional<String> exchange(String line) {
        lock.lock();
        try {
            if (!reading) {
                return Optional.empty();
            }
            String before = buf.toString();
            setBuffer(line);
            redisplay(true);
            return Optional.of(before);
        } finally {
            lock.unlock();
        }
    }

    @Override
    protected void redisplay(boolean flush) {
        lock.lock();
        try {
            if (post == null || post == drawn) {
                AttributedString said = leaving ? AttributedString.EMPTY : below();
                drawn = said.length() == 0 ? null : () -> said;
                post = drawn;
            }
            super.redisplay(flush);
        } finally {
            lock.unlock();
        }
    }

    @Override
    protected void doCleanup(boolean newLine) {
        leaving = true;
        try {
            super.doCleanup(newLine);
        } finally {
            leaving = false;
        }
    }

    /** A window of another width has broken the strip's lines in its own way: they are wiped, not corrected. */
    @Override
    protected void handleSignal(Terminal.Signal signal) {
        lock.lock();
        try {
            super.handleSignal(signal);
            if (signal == Terminal.Signal.WINCH && below().length() > 0) {
                terminal.puts(InfoCmp.Capability.carriage_return);
                terminal.puts(InfoCmp.Capability.clr_eos);
                redrawLine();
                redisplay(true);
            }
        } finally {
            lock.unlock();
        }
    }

    @Override
    public Binding readBinding(KeyMap<Binding> keys, KeyMap<Binding> local) {
        Binding pressed = next(keys, local);
        while (sounds.getAsBoolean()) {
            hush.run();
            if (pressed == null || buf.length() > 0 || !ONLY_STOP.contains(getLastBinding())) {
                return orWholeLine(pressed);
            }
            pressed = next(keys, local);
        }
        return orWholeLine(pressed);
    }

    /** A digit that says all there is to say is entered at once. */
    private Binding orWholeLine(Binding pressed) {
        String last = getLastBinding();
        boolean isWhole = !isEntering
                && pressed != null
                && buf.length() == 0
                && last.matches("[0-9]")
                && wholeLine.test(last.charAt(0) - '0');
        isEntering = isWhole;
        return isWhole ? new Macro(last + "\r") : pressed;
    }

    private Binding next(KeyMap<Binding> keys, KeyMap<Binding> local) {
        keys.setAmbiguousTimeout(
                sounds.getAsBoolean() ? QUICK_MILLIS : getLong(AMBIGUOUS_BINDING, DEFAULT_AMBIGUOUS_BINDING));
        return super.readBinding(keys, local);
    }

    private long getLong(String name, long usual) {
        return getVariable(name) instanceof Number said ? said.longValue() : usual;
    }
}
