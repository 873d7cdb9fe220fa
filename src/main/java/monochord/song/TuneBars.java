package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/** The tune of written bars. {@code ...} says that the rest is not written yet. */
final class TuneBars {
    private static final Pattern ELLIPSIS = Pattern.compile("(?<!\\S)(?:\\.\\.\\.|…)(?!\\S)");
    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final int MOST_TRIES = 20;

    private final List<WrittenBar> written;
    private final List<SongFault> faults;
    private final StringBuilder text = new StringBuilder();
    private final List<Integer> offsets = new ArrayList<>();

    /** A bar of the tune: what sounds in it, and how long it is. */
    record TuneBar(List<NotePart> pieces, Beats beats) {}

    /**
     * A note, as far as it lies in one bar.
     *
     * @param start from the start of the bar
     * @param held whether it goes on from the bar before
     */
    record NotePart(Pitch pitch, Beats start, Beats beats, boolean held) {}

    private TuneBars(List<WrittenBar> written, List<SongFault> faults) {
        this.written = written;
        this.faults = faults;
    }

    /** As many as the bars; where the tune cannot be read, fewer sound. */
    static List<TuneBar> read(List<WrittenBar> written, List<SongFault> faults) {
        return written.isEmpty() ? List.of() : new TuneBars(written, faults).bars();
    }

    private List<TuneBar> bars() {
        for (WrittenBar bar : written) {
            offsets.add(text.length());
            text.append(ELLIPSIS.matcher(bar.text())
                            .replaceAll(match -> " ".repeat(match.group().length())))
                    .append(' ');
        }
        offsets.add(text.length());
        return cut(melody());
    }

    /** What cannot be read is put aside with a fault, as often as that may help. */
    private Optional<Melody> melody() {
        for (int tries = 0; tries < MOST_TRIES && !text.toString().isBlank(); tries++) {
            try {
                return Optional.of(Melody.parse(text.toString()));
            } catch (Unreadable unreadable) {
                fault(unreadable);
            }
        }
        text.replace(0, text.length(), " ".repeat(text.length()));
        return Optional.empty();
    }

    private void fault(Unreadable unreadable) {
        int place = Math.min(unreadable.place(), text.length() - 1);
        int bar = barAt(place);
        WrittenBar.Place start = written.get(bar).place();
        faults.add(new SongFault(
                start.line(),
                start.column() + place - offsets.get(bar),
                Phrase.clause(unreadable.trouble()),
                Phrase.of("write for example {0}", Phrase.typed(unreadable.example()))));
        Matcher word = WORD.matcher(text);
        boolean found = false;
        while (!found && word.find()) {
            found = word.end() > place;
        }
        int from = found ? word.start() : 0;
        int to = found ? word.end() : text.length();
        text.replace(from, to, " ".repeat(to - from));
    }

    private int barAt(int place) {
        int bar = 0;
        while (bar + 1 < written.size() && offsets.get(bar + 1) <= place) {
            bar++;
        }
        return bar;
    }

    private List<TuneBar> cut(Optional<Melody> melody) {
        List<Melody.MelodyNote> notes = melody.map(Melody::notes).orElse(List.of());
        List<TuneBar> bars = new ArrayList<>();
        Beats start = Beats.ZERO;
        int next = 0;
        for (int i = 0; i < written.size(); i++) {
            Beats end = start.plus(length(text.substring(offsets.get(i), offsets.get(i + 1))));
            while (next < notes.size() && notes.get(next).end().compareTo(start) <= 0) {
                next++;
            }
            List<NotePart> pieces = new ArrayList<>();
            for (int n = next; n < notes.size() && notes.get(n).start().compareTo(end) < 0; n++) {
                pieces.add(piece(notes.get(n), start, end));
            }
            bars.add(new TuneBar(pieces, end.minus(start)));
            start = end;
        }
        return bars;
    }

    private static NotePart piece(Melody.MelodyNote note, Beats start, Beats end) {
        boolean held = note.start().compareTo(start) < 0;
        Beats from = held ? start : note.start();
        Beats to = note.end().compareTo(end) > 0 ? end : note.end();
        return new NotePart(note.pitch(), from.minus(start), to.minus(from), held);
    }

    private static Beats length(String bar) {
        Beats length = Beats.ZERO;
        Matcher word = WORD.matcher(bar);
        while (word.find()) {
            int colon = word.group().indexOf(':');
            length =
                    length.plus(colon < 0 ? Beats.ONE : Beats.parse(word.group().substring(colon + 1)));
        }
        return length;
    }
}
