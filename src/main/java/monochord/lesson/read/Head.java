package monochord.lesson.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

    static Head read(List<Line> lines, Faults faults) {
        if (!isFence(lines.get(0))) {
            faults.at(
                    1,
                    1,
                    "the head is missing",
                    "write --- on the first line, below it title, grade, needs and skills, then ---");
            return new Head(Map.of(), 0);
        }
        int close = close(lines);
        if (close < 0) {
            faults.at(1, 1, "the head is not closed", "write --- on a line of its own below the last field");
        }
        int last = close < 0 ? lastField(lines) : close;
        Map<String, Field> fields = fields(lines.subList(1, last), faults);
        NAMES.stream().filter(name -> !fields.containsKey(name)).forEach(name -> missing(name, faults));
        return new Head(fields, close < 0 ? last : close + 1);
    }

    private static boolean isFence(Line line) {
        return line.text().stripTrailing().equals(FENCE);
    }

    private static int close(List<Line> lines) {
        for (int i = 1; i < Math.min(lines.size(), MOST_LINES); i++) {
            if (isFence(lines.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static int lastField(List<Line> lines) {
        int i = 1;
        while (i < Math.min(lines.size(), MOST_LINES) && Field.looksLike(lines.get(i))) {
            i++;
        }
        return i;
    }

    private static Map<String, Field> fields(List<Line> lines, Faults faults) {
        Map<String, Field> fields = new LinkedHashMap<>();
        for (Line line : lines) {
            if (!line.isBlank() && !line.text().startsWith("#")) {
                Field.read(line, NAMES, "field", faults).ifPresent(field -> Field.put(fields, field, faults));
            }
        }
        return fields;
    }

    private static void missing(String name, Faults faults) {
        faults.at(1, 1, "the head has no " + name, "write " + example(name));
    }

    static String example(String name) {
        return switch (name) {
            case "title" -> "title: and the name of the lesson";
            case "grade" -> "grade: and a number from 1 to 8";
            case "needs" -> "needs: [] or needs: [slug-of-a-lesson, slug-of-another]";
            default -> "skills: [first-skill, second-skill]";
        };
    }

    Optional<Field> field(String name) {
        return Optional.ofNullable(fields.get(name));
    }
}
