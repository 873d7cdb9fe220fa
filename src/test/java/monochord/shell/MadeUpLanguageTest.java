package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.course.Course;
import monochord.lesson.read.LibraryEntry;
import monochord.notebook.NotebookReader;
import monochord.practice.skill.Skills;
import monochord.shell.replay.Replay;
import monochord.shell.sentence.Usage;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.shell.verb.sounding.PlaybackOptions;
import monochord.sound.Patch;
import monochord.text.MadeUpLanguage;
import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Look;
import monochord.view.advice.AfterAnswer;
import monochord.view.course.ProgressTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Draws the demos, the pages of help and the examples in them in a made-up language, and looks for what is left in LeftInEnglish
 * and for what its longer words push out of the window.
 */
class MadeUpLanguageTest {
    /** A word of a sentence; what stands in a chord symbol is shorter or joined to its root. */
    private static final Pattern WORD = Pattern.compile(
            "(?<![\\p{L}\\d♭♯°ø/#(_-])([A-Za-z]?[a-z]{3,}|an?|by|in|is|it|no|of|on|or|to|up)(?![\\p{L}_-])");

    /** What is no word: parts of chord symbols, and numerals. */
    private static final Pattern NOTATION =
            Pattern.compile("[A-GVI]?(maj|min|dim|aug|sus|add|omit|ped)|[iv]{3,}|Abmaj");

    /** What is typed or pressed, and reads the same in every language. */
    private static final List<String> TYPED = List.of(
            "Enter",
            "D major",
            "E harmonic minor",
            "harmonic minor",
            "G mixolydian",
            "electric piano 1",
            "with bass",
            "under tune",
            "var verse = \"F C G Ab\", then play $verse in C");

    private static final int WIDE = 200;
    private static final int SCREEN = 80;
    /** Besides the screen's; an answer is usually drawn in one of them. */
    private static final List<Integer> OTHER_WIDTHS = List.of(WIDE, 40, 20);

    private static final List<String> HELP = List.of(
            "help",
            "help music",
            "help java",
            "help ears",
            "help hands",
            "help band",
            "help enter",
            "help exploring",
            "help sound",
            "help learning",
            "help teaching",
            "help writing",
            "help leaving",
            "help nothing");

    private final Verbs verbs = new Verbs();
    /** Names that are the same in every language: of lessons, of sounds, of what is typed; the longest first. */
    private final Set<String> names =
            new TreeSet<>(Comparator.comparingInt(String::length).reversed().thenComparing(name -> name));

    private final Set<String> typed = new TreeSet<>();
    private final Set<LeftInEnglish> met = new TreeSet<>();
    private final Map<String, Set<String>> left = new TreeMap<>();
    private final List<String> outside = new ArrayList<>();
    private int drawn;

    @BeforeEach
    void gatherNames() {
        for (LibraryEntry entry : new Course(Run.OUR_LESSONS).library().entries()) {
            names.addAll(List.of(entry.title(), entry.book()));
        }
        names.addAll(TYPED);
        names.addAll(List.of("Open Music Theory", "Integrated Music Theory"));
        names.addAll(List.of("Part A", "Part B")); // sections, as a book of tunes calls them
        names.add("Chords in D"); // as a teacher calls an assignment
        Stream.of("java.vendor", "os.name", "os.arch").map(System::getProperty).forEach(names::add);
        Skills.all()
                .forEach(skill -> names.addAll(List.of(skill.id(), skill.title().toString())));
        Patch.all().forEach(patch -> names.add(patch.toString()));
        names.addAll(PlaybackOptions.patterns());
        verbs.all().stream().map(verb -> verb.usage()).forEach(this::gather);
    }

    private void gather(Usage usage) {
        typed.add(usage.word());
        Stream.of(usage.smallWords(), usage.options(), usage.words())
                .flatMap(Collection::stream)
                .forEach(words -> typed.addAll(List.of(words.split(" "))));
        typed.add(usage.topic().toString());
        usage.examples().stream().filter(example -> example.contains(" ")).forEach(names::add);
    }

    private static Sitting sitting() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        return new Run.Outside()
                .around(InputStream.nullInputStream(), nowhere, nowhere)
                .sitting();
    }

    private static List<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("transcripts-demo"))) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    @DisplayName("of what is drawn, only what is listed is left in English, and nothing is cut or pushed out")
    void onlyWhatIsListedIsLeft() throws IOException {
        for (Path demo : demos()) {
            Sitting outer = sitting();
            new LineReading(verbs, outer);
            Replay.of(NotebookReader.read(demo).notebook().orElseThrow(), outer, true)
                    .turns()
                    .forEach(turn -> look(turn.written().text(), turn.answer()));
        }
        lines().forEach(line -> look(line, new LineReading(verbs, sitting()).read(line)));
        assertTrue(drawn > 400, "only " + drawn + " answers drawn");
        assertEquals(Map.of(), left, "left in English");
        assertEquals(Set.of(LeftInEnglish.values()), met, "listed, and not there any more");
        assertEquals(List.of(), outside, "cut, wider than the window, or cells without a gap");
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(HELP);
        verbs.all().forEach(verb -> {
            lines.add("help " + verb.usage().word());
            lines.addAll(verb.usage().examples().stream()
                    .filter(example -> !example.matches(".* --(svg|html|musicxml|pdf|abc|out) .*"))
                    .toList());
            lines.add(verb.usage().word() + " Qx");
        });
        lines.removeIf(
                line -> line.contains("--wav") || line.contains("--midi") || line.matches("(save|note|publish) .*"));
        return lines;
    }

    private void look(String line, Answer answer) {
        drawn++;
        Set<String> said = words(line);
        Look wide = new Look(WIDE, Signs.MUSIC, false, false).speaking(new MadeUpLanguage());
        look(said, answer, wide);
        look(said, answer, wide.asPlain());
        Stream.concat(Stream.of(SCREEN), Thorough.spread(OTHER_WIDTHS, 1, drawn).stream())
                .map(wide::inWidth)
                .forEach(narrow -> {
                    fits(line, answer, narrow);
                    fits(line, answer, narrow.asPlain());
                });
    }

    /** Rows for other programs are not broken. */
    private void fits(String line, Answer answer, Look look) {
        StyledText text = answer.text(look);
        String plain = text.plain();
        boolean isGlued = plain.contains("⟧⟦");
        boolean isWide = text.columns() > look.width() && !(answer instanceof ProgressTable);
        boolean isCut = count('⟦', plain) != count('⟧', plain)
                || look.width() == SCREEN
                        && count('⟦', plain) != count('⟦', wide(answer, look))
                        && !leavesRowsOut(answer);
        if (isWide || isCut || isGlued) {
            outside.add(line + ", " + look.width() + " columns:\n" + plain);
        }
    }

    private static String wide(Answer answer, Look look) {
        return answer.text(look.inWidth(WIDE)).plain();
    }

    private static long count(char mark, String text) {
        return text.chars().filter(c -> c == mark).count();
    }

    /** Of the ways on from a chord there are as many as a screen holds, fewer where each takes more lines. */
    private static boolean leavesRowsOut(Answer answer) {
        return answer instanceof AfterAnswer;
    }

    /** Looks at what an answer says itself, and at the answers in it. */
    private void look(Set<String> said, Answer answer, Look look) {
        List<Answer> parts = parts(answer);
        Set<StyledLine> theirs = new HashSet<>();
        parts.forEach(part -> theirs.addAll(part.text(look).lines()));
        String own = answer.text(look).lines().stream()
                .filter(line -> !theirs.contains(line))
                .map(MadeUpLanguageTest::withoutJava)
                .collect(Collectors.joining(" "));
        Set<String> words = unnamed(MadeUpLanguage.unmarked(own));
        words.removeAll(said);
        words.removeAll(typed);
        Optional<LeftInEnglish> kind = LeftInEnglish.where(answer);
        if (kind.isPresent() && !words.isEmpty()) {
            met.add(kind.get());
            words.removeAll(words(kind.get().of(answer)));
        }
        if (!words.isEmpty()) {
            left.computeIfAbsent(answer.getClass().getSimpleName(), name -> new TreeSet<>())
                    .addAll(words);
        }
        parts.forEach(part -> look(said, part, look));
    }

    private static String withoutJava(StyledLine line) {
        return line.spans().stream()
                .filter(span -> span.style() != Style.JAVA)
                .map(Span::text)
                .collect(Collectors.joining());
    }

    private static List<Answer> parts(Answer answer) {
        List<Answer> parts = new ArrayList<>();
        if (!answer.getClass().isRecord()) {
            return parts; // it holds values, not answers
        }
        for (RecordComponent component : answer.getClass().getRecordComponents()) {
            Object value = value(answer, component);
            for (Object one : value instanceof Collection<?> several ? several : List.of(value)) {
                if (one instanceof Answer part) {
                    parts.add(part);
                }
            }
        }
        return parts;
    }

    private static Object value(Answer answer, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return Optional.ofNullable(component.getAccessor().invoke(answer)).orElse("");
        } catch (ReflectiveOperationException hidden) {
            throw new AssertionError(hidden);
        }
    }

    /** The words of a text in which no names are. */
    private Set<String> unnamed(String text) {
        String rest = text.replaceAll("\\s+", " ");
        for (String name : names) {
            rest = rest.replace(name, " ");
        }
        return words(rest);
    }

    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        WORD.matcher(text).results().forEach(found -> words.add(found.group()));
        words.removeIf(word -> NOTATION.matcher(word).matches());
        return words;
    }
}
