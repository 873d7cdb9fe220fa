package monochord.shell;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.LongSupplier;
import monochord.cell.JvmCell;
import monochord.course.Course;
import monochord.shell.journal.Drafts;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.SeedSource;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.Keeper;
import monochord.shell.storage.Settings;
import monochord.shell.trust.Trusted;
import monochord.theory.note.Signs;
import monochord.view.Look;

/**
 * Everything outside the program that a run of it touches, handed in, so that a whole run is a function of these.
 *
 * @param typing whether a person types at {@code in}
 * @param watching whether a person reads {@code out} on a terminal
 * @param lessons the folder with the books of lessons
 * @param seeds where chance comes from
 * @param clock milliseconds since 1970 in UTC
 * @param keepers what keeps a learner's answers, given the folder for the learner's own things
 */
public record Surroundings(
        InputStream in,
        PrintStream out,
        PrintStream err,
        boolean typing,
        boolean watching,
        Map<String, String> environment,
        Path folder,
        Path lessons,
        SeedSource seeds,
        Ear ear,
        LongSupplier clock,
        Function<Path, Keeper> keepers) {

    private static final int USUAL_WIDTH = 80;
    private static final int USUAL_CELL_SECONDS = 10;

    /** A new sitting here. */
    Sitting sitting() {
        Settings settings = Settings.in(home());
        Sitting sitting = new Sitting(
                ear,
                seeds,
                folder,
                new Course(lessons, home().resolve("lessons")),
                new Sitting.Storage(clock, keepers.apply(home()), settings));
        sitting.cells().takeFrom(() -> new JvmCell(() -> cellLimit(settings)));
        sitting.outside().take(new Trusted(home(), ProgramFolders.folders()));
        sitting.outside().take(new Drafts(home(), clock));
        return sitting;
    }

    /** How long a cell of Java may take. */
    static Duration cellLimit(Settings settings) {
        return Duration.ofSeconds(settings.get(Sitting.CELL_SECONDS)
                .filter(text -> text.matches("0|[1-9][0-9]{0,2}"))
                .map(Integer::parseInt)
                .orElse(USUAL_CELL_SECONDS));
    }

    /** How answers look here when no option says otherwise. */
    Look look() {
        boolean terminal = watching && !"dumb".equals(variable("TERM"));
        boolean colour = terminal && variable("NO_COLOR").isEmpty();
        Signs signs = !watching || isUnicode() ? Signs.MUSIC : Signs.ASCII;
        return new Look(width(), signs, false, colour);
    }

    /** What a pipe carries is always UTF-8; a terminal shows what its locale says. */
    private boolean isUnicode() {
        String locale = firstSet("LC_ALL", "LC_CTYPE", "LANG").toLowerCase(Locale.ROOT);
        return locale.contains("utf-8") || locale.contains("utf8") || onWindowsOrMac();
    }

    private boolean onWindowsOrMac() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        return system.contains("mac") || system.contains("windows");
    }

    private int width() {
        String columns = variable("COLUMNS");
        return columns.matches("[0-9]{1,4}") && !columns.matches("0+") ? Integer.parseInt(columns) : USUAL_WIDTH;
    }

    String variable(String name) {
        return environment.getOrDefault(name, "");
    }

    private String firstSet(String... names) {
        for (String name : names) {
            if (!variable(name).isEmpty()) {
                return variable(name);
            }
        }
        return "";
    }

    /** Where the learner's own things are kept: {@code MONOCHORD_HOME}, else the place the system has for such. */
    Path home() {
        if (!variable("MONOCHORD_HOME").isEmpty()) {
            return folder.resolve(variable("MONOCHORD_HOME"));
        }
        Path user = Path.of(System.getProperty("user.home", "."));
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("windows") && !variable("APPDATA").isEmpty()) {
            return Path.of(variable("APPDATA"), "monochord");
        }
        if (system.contains("mac")) {
            return user.resolve("Library").resolve("Application Support").resolve("monochord");
        }
        String data = variable("XDG_DATA_HOME");
        return (data.isEmpty() ? user.resolve(".local").resolve("share") : Path.of(data)).resolve("monochord");
    }
}
