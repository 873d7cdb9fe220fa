package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;

/**
 * The chords of written bars. In a bar stand chords as in every progression, {@code .} for a share more, {@code %} for the
 * bar before, {@code r} where no chord sounds, {@code !} behind a chord for a hit, and cues between double quotes.
 */
public final class ChordBars {
    static final Pattern TOKEN =
            Pattern.compile("\"[^\"]*\"|[^\\s\"]+(?:\\s+\\((?:add|no|omit|sus|maj|[b#])[^)\\s]*(?:\\s\\d+)?\\))?");

    private static final int MOST_SHARES = 64;

    private final Key key;
    private final List<SongFault> faults;
    private final List<List<Slot>> bars = new ArrayList<>();
    private Slot last;

    /**
     * A chord in its bar, or none.
     *
     * @param held whether it goes on from the bar before
     * @param hit whether it is struck short and together
     */
    public record Slot(Optional<ChordEvent> chord, int shares, boolean held, boolean hit) {
        Slot longer() {
            return new Slot(chord, shares + 1, held, hit);
        }
    }

    private ChordBars(Key key, List<SongFault> faults) {
        this.key = key;
        this.faults = faults;
    }

    /** As many lists as bars; one is empty only where nothing in its bar can be read. */
    static List<List<Slot>> read(List<WrittenBar> written, Key key, List<SongFault> faults) {
        ChordBars reading = new ChordBars(key, faults);
        written.forEach(reading::bar);
        return reading.bars;
    }

    private void bar(WrittenBar bar) {
        List<Slot> slots = new ArrayList<>();
        Matcher token = TOKEN.matcher(bar.text());
        while (token.find() && slots.size() < MOST_SHARES) {
            token(token.group(), slots, bar, token.start());
        }
        bars.add(slots);
    }

    private void token(String token, List<Slot> slots, WrittenBar bar, int place) {
        if (token.startsWith("\"") || token.equals("...") || token.equals("…")) {
            return;
        }
        switch (token) {
            case "." -> hold(slots, bar, place);
            case "%" -> repeat(slots, bar, place);
            case "r", "R", "N.C.", "NC" -> strike(new Slot(Optional.empty(), 1, false, false), slots);
            default -> chord(token, slots, bar, place);
        }
    }

    static boolean isSilence(String token) {
        return token.matches("[rR]|N\\.C\\.|NC");
    }

    private void strike(Slot slot, List<Slot> slots) {
        last = slot;
        slots.add(slot);
    }

    private void hold(List<Slot> slots, WrittenBar bar, int place) {
        if (!slots.isEmpty()) {
            slots.set(slots.size() - 1, slots.get(slots.size() - 1).longer());
        } else if (last != null) {
            slots.add(new Slot(last.chord(), 1, true, false));
        } else {
            fault(bar, place, Phrase.of("nothing stands before this hold"), Phrase.of("write a chord first"));
        }
    }

    private void repeat(List<Slot> slots, WrittenBar bar, int place) {
        if (bars.isEmpty() || !slots.isEmpty()) {
            fault(bar, place, Phrase.of("no bar stands before this repeat"), Phrase.of("write the bar out"));
        } else {
            slots.addAll(bars.get(bars.size() - 1));
        }
    }

    private void chord(String token, List<Slot> slots, WrittenBar bar, int place) {
        try {
            boolean hit = token.endsWith("!");
            String symbol = hit ? token.substring(0, token.length() - 1) : token;
            ChordEvent event = Progression.parse(symbol, key).slots().get(0);
            strike(new Slot(Optional.of(event), 1, false, hit), slots);
        } catch (Unreadable unreadable) {
            fault(
                    bar,
                    place + Math.min(unreadable.place(), token.length()),
                    Phrase.clause(unreadable.trouble()),
                    Phrase.of("write for example {0}", Phrase.typed("IV I | V . bVI")));
        }
    }

    private void fault(WrittenBar bar, int place, Phrase what, Phrase instead) {
        faults.add(new SongFault(bar.place().line(), bar.place().column() + place, what, instead));
    }

    /** As a progression in bars; a bar without a chord goes on with the one before, at the start with the next. */
    static Optional<Progression> progression(List<List<Slot>> bars, Key key) {
        List<Bar> all = new ArrayList<>();
        ChordEvent before = bars.stream()
                .flatMap(List::stream)
                .flatMap(slot -> slot.chord().stream())
                .findFirst()
                .orElse(null);
        if (before == null) {
            return Optional.empty();
        }
        for (List<Slot> bar : bars) {
            List<ChordEvent> events = new ArrayList<>();
            for (Slot slot : bar) {
                boolean isFirst = all.isEmpty() && events.isEmpty();
                boolean held = !isFirst && (slot.held() || slot.chord().isEmpty());
                ChordEvent event = slot.chord().orElse(before);
                before = event;
                events.add(new ChordEvent(event.chord(), event.numeral(), slot.shares(), held));
            }
            if (events.isEmpty()) {
                events.add(new ChordEvent(before.chord(), before.numeral(), 1, !all.isEmpty()));
            }
            all.add(new Bar(events, false));
        }
        return Optional.of(new Progression(key, all, true));
    }
}
