package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import monochord.text.Csv.CsvRow;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source: RFC 4180, section 2; OWASP, "CSV Injection". */
class CsvTest {
    private static final String SIGNS = "ab,;\"\r\n\t ='#\u266D7";

    /**
     * A reader of its own, strict as RFC 4180 has it: rows end with CR LF, a quote stands only around a cell or doubled in
     * one, and nothing behind a cell but a comma or the end.
     */
    static List<List<String>> strictly(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        int i = 0;
        while (i < text.length()) {
            StringBuilder cell = new StringBuilder();
            if (text.charAt(i) == '"') {
                i++;
                while (text.charAt(i) != '"' || i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    i += text.charAt(i) == '"' ? 1 : 0;
                    cell.append(text.charAt(i++));
                }
                i++;
            } else {
                while (text.charAt(i) != ',' && text.charAt(i) != '\r') {
                    if (text.charAt(i) == '"' || text.charAt(i) == '\n') {
                        throw new AssertionError("a bare quote or line feed at " + i + " of " + text);
                    }
                    cell.append(text.charAt(i++));
                }
            }
            row.add(cell.toString());
            if (text.startsWith("\r\n", i)) {
                rows.add(row);
                row = new ArrayList<>();
                i += 2;
            } else if (text.charAt(i) == ',') {
                i++;
            } else {
                throw new AssertionError("no end of a cell at " + i + " of " + text);
            }
        }
        assertEquals(List.of(), row);
        return rows;
    }

    private static String cell(Random chance) {
        StringBuilder cell = new StringBuilder();
        for (int i = chance.nextInt(8); i > 0; i--) {
            cell.append(SIGNS.charAt(chance.nextInt(SIGNS.length())));
        }
        return cell.toString();
    }

    @Test
    void whatIsWrittenIsReadByAnyReaderAndByOurOwn() {
        Random chance = new Random(4);
        for (int i = 0; i < 3000; i++) {
            List<String> cells = List.of("7b-04", cell(chance), cell(chance));
            List<String> safe = cells.stream().map(CsvTest::shown).toList();
            String row = Csv.row(cells);
            assertEquals(List.of(safe), strictly(row));
            assertEquals(
                    List.of(safe),
                    Csv.rows(row, ',').stream().map(CsvRow::cells).toList());
        }
    }

    private static String shown(String cell) {
        return cell.matches("(?s)[=\t\r\n+@-].*") ? "'" + cell : cell;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20A"
            })
    void noCellIsRunAsAFormula(String cell) {
        assertEquals(
                "'" + cell, strictly(Csv.row(List.of("7b-04", cell))).get(0).get(1));
    }

    @Test
    void aRowLooksLikeThis() {
        assertEquals(
                "7b-04,'-2,Bb D F,\"a \"\"b\"\", c\",\r\n",
                Csv.row(List.of("7b-04", "-2", "Bb D F", "a \"b\", c", "")));
    }

    @Test
    void linesMayEndAsInAnySystem() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            List<CsvRow> rows = Csv.rows("a,\"b" + end + "c\"" + end + end + "d" + end, ',');
            assertEquals(
                    List.of(List.of("a", "b" + end + "c"), List.of(""), List.of("d")),
                    rows.stream().map(CsvRow::cells).toList());
            assertEquals(
                    List.of(false, true, false),
                    rows.stream().map(CsvRow::isBlank).toList());
        }
    }

    @Test
    void whatIsNoTableSaysWhere() {
        assertEquals(
                "\"a,\"b\" is not a list: the quotation mark is never closed. Example: 7b-04,Ana,Thursday",
                assertThrows(Unreadable.class, () -> Csv.rows("a,\"b", ',')).getMessage());
        assertEquals(
                "\"a,\"b\"c\" is not a list: nothing may follow a closed quotation mark. Example: 7b-04,Ana,Thursday",
                assertThrows(Unreadable.class, () -> Csv.rows("a,\"b\"c", ',')).getMessage());
    }
}
