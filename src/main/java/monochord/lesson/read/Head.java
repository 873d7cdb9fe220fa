package monochord.lesson.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.text.Phrase;

/**
 * The head of a lesson: the fields between two lines of three hyphens.
 *
 * @param fields by name, with the line each stands on
 * @param end how many lines of the file belong to the head
 */
record Head(Map<String, Field> fields, int end) {
    static final List<String> NAMES = List.of("title", "grade", "needs", "skills");

    private static final String FENCE = "---";
    private static final int MOST_LINES = 30;

    static Head read(List<SourceLine> lines, Faults faults) {
        if (!isFence(lines.get(0))) {
            faults.at(
                    1,
                    1,
                    Phrase.of("the head is missing"),
                    Phrase.of("write --- on the first line, below it title, grade, needs and skills, then ---"));
            return new Head(Map.of(), 0);
        }
        int close = close(lines);
        if (close < 0) {
            faults.at(
                    1,
                    1,
                    Phrase.of("the head is not closed"),
                    Phrase.of("write --- on a line of its own below the last field"));
        }
        int last = close < 0 ? lastField(lines) : close;
        Map<String, Field> fields = fields(lines.subList(1, last), faults);
        NAMES.stream().filter(name -> !fields.containsKey(name)).forEach(name -> missing(name, faults));
        return new Head(fields, close < 0 ? last : close + 1);
    }

    private static boolean isFence(SourceLine line) {
        return line.text().stripTrailing().equals(FENCE);
    }

    private static int close(List<SourceLine> lines) {
        for (int i = 1; i < Math.min(lines.size(), MOST_LINES); i++) {
            if (isFence(lines.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static int lastField(List<SourceLine> lines) {
        int i = 1;
        while (i < Math.min(lines.size(), MOST_LINES) && Field.looksLike(lines.get(i))) {
            i++;
        }
        return i;
    }

    private static Map<String, Field> fields(List<SourceLine> lines, Faults faults) {
        Map<String, Field> fields = new LinkedHashMap<>();
        for (SourceLine line : lines) {
            if (!line.isBlank() && !line.text().startsWith("#")) {
                Field.read(line, NAMES, Phrase.of("field"), faults)
                        .ifPresent(field -> Field.put(fields, field, faults));
            }
        }
        return fields;
    }

    private static void missing(String name, Faults faults) {
        faults.at(1, 1, Phrase.of("the head has no {0}", Phrase.typed(name)), example(name));
    }

    /** What to write for a field of this name. */
    static Phrase example(String name) {
        return Phrase.of(
                switch (name) {
                    case "title" -> "write title: and the name of the lesson";
                    case "grade" -> "write grade: and a number from 1 to 8";
                    case "needs" -> "write needs: [] or needs: [slug-of-a-lesson, slug-of-another]";
                    default -> "write skills: [first-skill, second-skill]";
                });
    }

    Optional<Field> field(String name) {
        return Optional.ofNullable(fields.get(name));
    }
}
