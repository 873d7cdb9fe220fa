package monochord.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Field;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Unreadable;

/** Reads the head of a notebook, if it has one. */
final class NotebookHead {
    private static final List<String> NAMES = List.of("notebook", "title", "key", "seed", "screen", "lesson", "notes");
    private static final String FENCE = "---";
    private static final int MOST_LINES = 30;
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");

    private final List<SourceLine> lines;
    private final Faults faults;
    private final Map<String, Field> fields = new LinkedHashMap<>();

    private NotebookHead(List<SourceLine> lines, Faults faults) {
        this.lines = lines;
        this.faults = faults;
    }

    /** How many lines of the file belong to the head. */
    static int end(List<SourceLine> lines) {
        List<SourceLine> first = lines.subList(0, Math.min(lines.size(), MOST_LINES));
        if (!isFence(first.get(0))) {
            return 0;
        }
        for (int i = 1; i < first.size(); i++) {
            if (isFence(first.get(i))) {
                return i + 1;
            }
        }
        return 0;
    }

    private static boolean isFence(SourceLine line) {
        return line.text().stripTrailing().equals(FENCE);
    }

    /** @param lines those of the head, perhaps none */
    static Start read(List<SourceLine> lines, Faults faults) {
        return lines.isEmpty() ? Start.USUAL : new NotebookHead(lines, faults).read();
    }

    private Start read() {
        for (SourceLine line : lines.subList(1, lines.size() - 1)) {
            if (!line.isBlank() && !line.text().startsWith("#")) {
                Field.read(line, NAMES, Phrase.of("field"), faults)
                        .ifPresent(field -> Field.put(fields, field, faults));
            }
        }
        said("notebook", NotebookHead::version, Phrase.of("write notebook: {0}", Start.VERSION));
        return new Start(
                lines.stream().map(line -> line.text() + "\n").collect(Collectors.joining()),
                said("title", NotebookHead::title, Phrase.of("write title: and a name")),
                said("key", NotebookHead::key, Phrase.of("write for example key: Eb"))
                        .orElse(Start.USUAL.key()),
                said("seed", NotebookHead::seed, Phrase.of("write a whole number"))
                        .orElse(OptionalLong.empty()),
                said("screen", Screen::parse, Phrase.of("write for example screen: 80x24"))
                        .orElse(Screen.USUAL),
                said(
                                "lesson",
                                NotebookHead::slug,
                                Phrase.of("write the file name of the lesson without its number and .md"))
                        .orElse(""),
                said("notes", NoteNaming::of, Phrase.of("write english, german or latin"))
                        .orElse(Start.USUAL.notes()));
    }

    private <T> Optional<T> said(String name, Function<String, Optional<T>> reader, Phrase instead) {
        Field field = fields.get(name);
        if (field == null) {
            return Optional.empty();
        }
        Optional<T> value = reader.apply(field.value().text());
        if (value.isEmpty()) {
            field.fault(Phrase.of("this {0} cannot be read", Phrase.typed(name)), instead, faults);
        }
        return value;
    }

    private static Optional<String> version(String text) {
        return Optional.of(text).filter(Integer.toString(Start.VERSION)::equals);
    }

    private static Optional<String> title(String text) {
        return Optional.of(text).filter(said -> !said.isEmpty());
    }

    private static Optional<Key> key(String text) {
        try {
            return Optional.of(Key.parse(text));
        } catch (Unreadable none) {
            return Optional.empty();
        }
    }

    private static Optional<OptionalLong> seed(String text) {
        return text.matches("[0-9]{1,18}") ? Optional.of(OptionalLong.of(Long.parseLong(text))) : Optional.empty();
    }

    private static Optional<String> slug(String text) {
        return Optional.of(text).filter(said -> SLUG.matcher(said).matches());
    }
}
