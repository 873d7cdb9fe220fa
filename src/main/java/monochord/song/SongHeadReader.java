package monochord.song;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Reads the head of a song; what is missing or wrong is a fault, and C major, 4/4 stand in its place. */
final class SongHeadReader {
    private static final String HYPHENS = "---";
    private static final int MOST_LINES = 40;
    private static final int FASTEST = 400;
    private static final List<String> NAMES = List.of("title", "by", "key", "metre", "tempo", "swing");

    private final List<String> lines;
    private final List<SongFault> faults;
    private final Map<String, Integer> places = new HashMap<>();
    private int end;

    SongHeadReader(List<String> lines, List<SongFault> faults) {
        this.lines = lines;
        this.faults = faults;
    }

    SongHead read() {
        fields();
        for (String name : List.of("title", "key", "metre")) {
            if (!places.containsKey(name)) {
                fault(1, 1, Phrase.of("the head has no {0}", Phrase.quoted(name)), example(name));
            }
        }
        return new SongHead(
                value("title"),
                value("by"),
                read("key", Key::parse, Key.major(NoteName.C)),
                read("metre", SongMetre::parse, SongMetre.COMMON),
                read("tempo", SongHeadReader::tempo, 0),
                value("swing"));
    }

    /** How many lines belong to the head. */
    int end() {
        return end;
    }

    private void fields() {
        if (lines.isEmpty() || !lines.get(0).strip().equals(HYPHENS)) {
            fault(
                    1,
                    1,
                    Phrase.of("the head is missing"),
                    Phrase.of("write --- on the first line, below it title, key and metre, then ---"));
            return;
        }
        int close = 1;
        while (close < Math.min(lines.size(), MOST_LINES)
                && !lines.get(close).strip().equals(HYPHENS)
                && !lines.get(close).startsWith("#")) {
            field(close);
            close++;
        }
        boolean closed = close < lines.size() && lines.get(close).strip().equals(HYPHENS);
        if (!closed) {
            fault(1, 1, Phrase.of("the head is not closed"), Phrase.of("write --- below its last field"));
        }
        end = closed ? close + 1 : close;
    }

    private void field(int index) {
        String line = lines.get(index);
        int colon = line.indexOf(':');
        String name = colon < 0 ? line.strip() : line.substring(0, colon).strip();
        if (line.isBlank()) {
            return;
        }
        if (!NAMES.contains(name)) {
            fault(
                    index + 1,
                    1,
                    Phrase.of("a song has no field \"{0}\"", Phrase.quoted(name)),
                    Phrase.of("write title, by, key, metre, tempo or swing, a colon, and what it is"));
        } else if (colon < 0) {
            fault(index + 1, line.length() + 1, Phrase.of("a colon is missing"), example(name));
        } else if (places.put(name, index) != null) {
            fault(index + 1, 1, Phrase.of("{0} is there twice", Phrase.quoted(name)), Phrase.of("write it once"));
        }
    }

    private String value(String name) {
        Integer index = places.get(name);
        String line = index == null ? "" : lines.get(index);
        return line.substring(line.indexOf(':') + 1).strip();
    }

    private <T> T read(String name, Function<String, T> reader, T otherwise) {
        Integer index = places.get(name);
        if (index == null) {
            return otherwise;
        }
        try {
            return reader.apply(value(name));
        } catch (Unreadable unreadable) {
            int place = lines.get(index).indexOf(value(name), lines.get(index).indexOf(':') + 1) + unreadable.place();
            fault(index + 1, place + 1, Phrase.clause(unreadable.trouble()), example(name));
            return otherwise;
        }
    }

    private static int tempo(String text) {
        int tempo = text.matches("\\d{1,3}") ? Integer.parseInt(text) : 0;
        if (tempo < 1 || tempo > FASTEST) {
            throw Unreadable.because(text, 0, "a tempo", "expected beats in a minute, 1 to 400", "84");
        }
        return tempo;
    }

    private static Phrase example(String name) {
        return switch (name) {
            case "title" -> Phrase.of("write title: and the name of the song");
            case "key" -> Phrase.of("write key: and its key, such as {0}", NoteName.parse("D"));
            case "metre" -> Phrase.of("write metre: and for example 4/4");
            case "tempo" -> Phrase.of("write tempo: and for example 84");
            default -> Phrase.of("write it as {0}: and what it is", Phrase.quoted(name));
        };
    }

    private void fault(int line, int column, Phrase what, Phrase instead) {
        faults.add(new SongFault(line, column, what, instead));
    }
}
