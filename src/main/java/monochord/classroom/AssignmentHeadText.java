package monochord.classroom;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import monochord.lesson.Trouble;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Field;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Unreadable;

/** The head of an assignment or of what is handed in: the fields between two lines of hyphens. */
final class AssignmentHeadText {
    static final String ASSIGNMENT = "assignment";
    static final String NOW = "now";
    static final String LATER = "later";
    private static final List<String> NAMES = List.of(
            ASSIGNMENT,
            "title",
            "for",
            "due",
            "seed",
            "tries",
            "hints",
            "verdicts",
            "digest",
            "code",
            "given",
            "notes");

    /** Three hyphens, or what an editor makes of them. */
    private static final Pattern FENCE = Pattern.compile("\\s*(?:-{3,}|[\u2010-\u2015]{1,3}-?)\\s*");

    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");
    private static final int MOST_LINES = 40;

    private final Faults faults;
    private final Map<String, Field> fields = new LinkedHashMap<>();
    private int end;

    private AssignmentHeadText(Faults faults) {
        this.faults = faults;
    }

    static AssignmentHeadText read(List<SourceLine> lines, Faults faults) {
        AssignmentHeadText head = new AssignmentHeadText(faults);
        head.readAll(lines);
        return head;
    }

    /** Whether a file begins as an assignment does. */
    static boolean begins(List<SourceLine> lines) {
        AssignmentHeadText head = new AssignmentHeadText(new Faults(""));
        return head.open(lines) >= 0
                && lines.stream()
                        .limit(MOST_LINES)
                        .anyMatch(line -> line.text().stripLeading().startsWith(ASSIGNMENT + ":"));
    }

    /** Index of the line that opens the head, or −1. */
    private int open(List<SourceLine> lines) {
        int first = 0;
        while (first < Math.min(lines.size(), MOST_LINES) && lines.get(first).isBlank()) {
            first++;
        }
        boolean isThere =
                first < lines.size() && FENCE.matcher(lines.get(first).text()).matches();
        return isThere ? first : -1;
    }

    private void readAll(List<SourceLine> lines) {
        int open = open(lines);
        if (open < 0) {
            faults.at(1, 1, Phrase.of("the head is missing"), Phrase.of("keep the file as it was given out"));
            return;
        }
        end = open + 1;
        int last = Math.min(lines.size(), open + MOST_LINES);
        while (end < last && !FENCE.matcher(lines.get(end).text()).matches()) {
            read(lines.get(end++));
        }
        if (end == last) {
            faults.at(
                    open + 1,
                    1,
                    Phrase.of("the head is not closed"),
                    Phrase.of("write --- on a line of its own below the last field"));
        } else {
            end++;
        }
    }

    private void read(SourceLine line) {
        if (!line.isBlank() && !line.text().startsWith("#")) {
            Field.read(line, NAMES, Phrase.of("field"), faults).ifPresent(field -> Field.put(fields, field, faults));
        }
    }

    /** How many lines of the file belong to it. */
    int end() {
        return end;
    }

    /** What it says of the assignment; nothing without an id and a title. */
    Optional<AssignmentHead> head() {
        Optional<String> id = said(ASSIGNMENT, AssignmentHeadText::id, Phrase.of("write for example triads-4711"));
        if (id.isEmpty() && !fields.containsKey(ASSIGNMENT) && end > 0) {
            faults.at(
                    1,
                    1,
                    Phrase.of("the head has no {0}", Phrase.typed(ASSIGNMENT)),
                    Phrase.of("keep the file as it was given out"));
        }
        Optional<LocalDate> due = date("due");
        Optional<Long> seed = said("seed", AssignmentHeadText::number, Phrase.of("write a whole number"));
        return id.map(known -> new AssignmentHead(
                known, text("title").orElse(known), text("for").orElse(""), due, seed.orElse(0L)));
    }

    AssignmentTerms terms() {
        int tries = said("tries", AssignmentHeadText::tries, Phrase.of("write any, or a number from 1 to 9"))
                .orElse(AssignmentTerms.ANY);
        boolean hints = said("hints", text -> choice(text, "yes", "no"), Phrase.of("write yes or no"))
                .orElse(true);
        boolean atOnce = said("verdicts", text -> choice(text, NOW, LATER), Phrase.of("write now or later"))
                .orElse(true);
        return new AssignmentTerms(tries, hints, atOnce);
    }

    String digest() {
        return said(
                        "digest",
                        text -> Optional.of(text)
                                .filter(it -> DIGEST.matcher(it).matches()),
                        Phrase.of("keep the line as it was given out"))
                .orElse("");
    }

    Optional<PupilCode> code() {
        Field field = fields.get("code");
        if (field == null || field.value().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(PupilCode.parse(field.value().text()));
        } catch (Unreadable unreadable) {
            faults.in(field.line(), field.value().place(), Trouble.of(unreadable));
            return Optional.empty();
        }
    }

    /** Whether something stands where the code goes. */
    boolean hasCode() {
        return text("code").isPresent();
    }

    NoteNaming notes() {
        return said("notes", NoteNaming::of, Phrase.of("write english, german or latin"))
                .orElse(NoteNaming.ENGLISH);
    }

    Optional<LocalDate> given() {
        return date("given");
    }

    private Optional<LocalDate> date(String name) {
        return said(name, AssignmentHeadText::day, Phrase.of("write year, month and day: 2026-12-10"));
    }

    private <T> Optional<T> said(String name, Function<String, Optional<T>> reader, Phrase instead) {
        Optional<T> value = text(name).flatMap(reader);
        if (value.isEmpty() && text(name).isPresent()) {
            fields.get(name)
                    .fault(Phrase.of("what stands behind {0} cannot be read", Phrase.typed(name)), instead, faults);
        }
        return value;
    }

    private Optional<String> text(String name) {
        return Optional.ofNullable(fields.get(name))
                .map(field -> field.value().text())
                .filter(text -> !text.isEmpty());
    }

    private static Optional<String> id(String text) {
        boolean isId = text.length() <= AssignmentHead.LONGEST_ID
                && AssignmentHead.ID.matcher(text).matches();
        return isId ? Optional.of(text) : Optional.empty();
    }

    private static Optional<Long> number(String text) {
        try {
            return Optional.of(Long.parseLong(text));
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }

    private static Optional<Integer> tries(String text) {
        if (text.equals("any")) {
            return Optional.of(AssignmentTerms.ANY);
        }
        return text.matches("[1-9]") ? Optional.of(Integer.parseInt(text)) : Optional.empty();
    }

    private static Optional<Boolean> choice(String text, String yes, String no) {
        return text.equals(yes) ? Optional.of(true) : text.equals(no) ? Optional.of(false) : Optional.empty();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(PlainWords.of(text)));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }
}
