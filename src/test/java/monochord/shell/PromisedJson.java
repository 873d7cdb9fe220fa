package monochord.shell;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the command line's JSON is written, for the tables of what it promises. */
final class PromisedJson {
    private PromisedJson() {}

    static final String NONE = "";

    static String json(String sentence) {
        return Run.of(sentence, "--json").result(0).stripTrailing();
    }

    static String list(String words, String between) {
        return words.isEmpty()
                ? "[]"
                : Arrays.stream(words.split(between)).collect(Collectors.joining("\",\"", "[\"", "\"]"));
    }

    static String notes(String notes) {
        return list(notes, " ");
    }

    /** A row, its names as they are said: numeral, number, symbol. */
    static String row(String names, String tones, String borrowedFrom, String key) {
        String[] name = names.split(" ");
        String root = tones.split(" ")[0];
        return rowOn(root, name, tones, borrowedFrom, key);
    }

    static String rowOn(String bass, String[] name, String tones, String borrowedFrom, String key) {
        String root = tones.split(" ")[0];
        return "{\"numeral\":\"" + name[0] + "\",\"number\":\"" + name[1] + "\",\"symbol\":\"" + name[2]
                + "\",\"root\":\"" + root + "\",\"bass\":\"" + bass + "\",\"tones\":" + notes(tones)
                + ",\"borrowedFrom\":" + list(borrowedFrom, ", ") + ",\"key\":\"" + key + "\"}";
    }

    /** What a borrowed chord has besides: degrees changed; chords before and behind it; degrees of the tune. */
    static String changed(String row, String degrees, String approach, String exit, String tune) {
        String[] welcomesAndFights = tune.split(" but ");
        return row.substring(0, row.length() - 1) + ",\"changed\":" + notes(degrees) + ",\"approach\":"
                + notes(approach) + ",\"exit\":" + notes(exit) + ",\"welcomes\":" + notes(welcomesAndFights[0])
                + ",\"fights\":" + notes(welcomesAndFights[1]) + "}";
    }

    static String chords(String... rows) {
        return Stream.of(rows).collect(Collectors.joining(",", "\"chords\":[", "]"));
    }
}
