package monochord.classroom;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.file.WholeFile;
import monochord.lesson.Fault;
import monochord.lesson.read.Faults;
import monochord.text.Csv;
import monochord.text.Csv.CsvRow;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.note.Unreadable;

/**
 * The teacher's list of pupils, the one file in which names stand beside codes.
 *
 * <p>Text form: CSV in UTF-8 with the columns {@code code,name,group}, which the first line may name; semicolons do as well as
 * commas.
 *
 * @param pupils in the order of the file, one for each code
 * @param faults rows that cannot be read; nobody in them is on the list
 */
public record ClassList(List<ListedPupil> pupils, List<Fault> faults) {
    /** Of nobody. */
    public static final ClassList NONE = new ClassList(List.of(), List.of());

    private static final String FILE = "class.csv";
    private static final String HEAD = "code";
    private static final int MOST_BYTES = 1 << 20;
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final Phrase ROW = Phrase.of("write for example {0}", Phrase.typed("7b-04,Ana,Thursday"));

    /**
     * @param name perhaps nothing
     * @param group perhaps nothing
     */
    public record ListedPupil(PupilCode code, String name, String group) {}

    public ClassList {
        pupils = List.copyOf(pupils);
        faults = List.copyOf(faults);
    }

    /** Where it is. */
    public static Path file(Path home) {
        return home.resolve(FILE);
    }

    public Set<PupilCode> codes() {
        return pupils.stream().map(ListedPupil::code).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Whether answers of that pupil are to be kept: where there is a list, of those who are on it. */
    public boolean admits(String code) {
        return pupils.isEmpty()
                || pupils.stream().anyMatch(one -> one.code().text().equals(code));
    }

    /** The codes of a group, whose name may be written large or small; none if there is no such group. */
    public Set<String> group(String name) {
        return pupils.stream()
                .filter(one -> one.group().equalsIgnoreCase(name) && !name.isEmpty())
                .map(one -> one.code().text())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * The list in that file; nobody if there is none.
     *
     * @param name of the file as it stands in the faults
     * @throws IOException with a message for the teacher
     */
    public static ClassList read(Path file, String name) throws IOException {
        return Files.exists(file) ? new ListReader(text(file), new Faults(name)).read() : NONE;
    }

    private static String text(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
            throw new Failure(file.toString(), Phrase.of("this is no list of pupils"));
        }
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }

    /**
     * Takes a pupil off the list in that file; all other lines stay as they are.
     *
     * @return whether the pupil was on it
     * @throws IOException with a message for the teacher; then the file is as it was
     */
    public static boolean remove(Path file, PupilCode code) throws IOException {
        String text = Files.exists(file) ? text(file) : "";
        StringBuilder left = new StringBuilder(text);
        List<CsvRow> rows;
        try {
            rows = Csv.rows(text, ListReader.separator(text));
        } catch (Unreadable unreadable) {
            throw new Failure(file.toString(), Phrase.of("a quotation mark in it is not closed"));
        }
        for (int i = rows.size() - 1; i >= 0; i--) {
            CsvRow row = rows.get(i);
            if (ListReader.code(row).filter(code::equals).isPresent()) {
                left.delete(row.start(), row.end());
            }
        }
        boolean isOn = left.length() < text.length();
        if (isOn) {
            WholeFile.writePrivately(file, part -> Files.writeString(part, left));
        }
        return isOn;
    }

    /** Goes through the rows of one file. */
    private static final class ListReader {
        private final String text;
        private final Faults faults;
        private final List<ListedPupil> pupils = new ArrayList<>();
        private final Set<PupilCode> codes = new LinkedHashSet<>();

        ListReader(String text, Faults faults) {
            this.text = text;
            this.faults = faults;
        }

        static char separator(String text) {
            int end = text.indexOf('\n');
            String first = end < 0 ? text : text.substring(0, end);
            return first.indexOf(';') >= 0 && first.indexOf(',') < 0 ? ';' : ',';
        }

        static Optional<PupilCode> code(CsvRow row) {
            try {
                return Optional.of(PupilCode.parse(written(row)));
            } catch (Unreadable noCode) {
                return Optional.empty();
            }
        }

        /** The first cell without the mark that some editors put before all else. */
        private static String written(CsvRow row) {
            String cell = row.cells().get(0);
            return (row.start() == 0 && cell.indexOf(BYTE_ORDER_MARK) == 0 ? cell.substring(1) : cell).strip();
        }

        ClassList read() {
            try {
                Csv.rows(text, separator(text), this::add);
            } catch (Unreadable unreadable) {
                int place = unreadable.place();
                faults.at(
                        line(place),
                        column(place),
                        Phrase.of("this quotation mark is not closed, or not at the end"),
                        ROW);
            }
            return new ClassList(pupils, faults.inOrder());
        }

        private void add(CsvRow row) {
            boolean isHead = row.start() == 0 && written(row).equalsIgnoreCase(HEAD);
            Optional<PupilCode> code = code(row);
            if (isHead || row.isBlank()) {
                return;
            }
            if (code.isEmpty()) {
                faults.at(line(row.start()), 1, Phrase.of("no pupil's code stands here"), ROW);
            } else if (!codes.add(code.get())) {
                faults.at(
                        line(row.start()),
                        1,
                        Phrase.of(
                                "{0} stands on the list twice",
                                Phrase.typed(code.get().text())),
                        Phrase.of("give each pupil a code of their own"));
            } else {
                pupils.add(new ListedPupil(code.get(), cell(row, 1), cell(row, 2)));
            }
        }

        private static String cell(CsvRow row, int index) {
            return index < row.cells().size()
                    ? SafeText.oneLine(row.cells().get(index)).strip()
                    : "";
        }

        private int line(int place) {
            return 1
                    + (int) text.substring(0, place)
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
        }

        private int column(int place) {
            return place - text.lastIndexOf('\n', place - 1);
        }
    }
}
