package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * The bars of one section, chords and tune together. A bar of chords is as long as the bar of the tune that it stands under,
 * without a tune as long as the metre says. Where the tune has a bar more and its first is short, that is a pick-up.
 *
 * @param bars as they are written
 * @param pickup how many of them come before the first full bar: 0 or 1
 * @param order of playing: indices of bars
 */
public record SectionMusic(Key key, List<SongBar> bars, int pickup, List<Integer> order) {
    /** A bar: what sounds in it, and what it was written as. */
    public record SongBar(List<Struck> chords, List<TuneBars.NotePart> tune, Beats beats, List<ChordBars.Slot> slots) {
        /** How many notes sound in it. */
        public int pieces() {
            return tune.size();
        }

        public Pitch pitch(int note) {
            return tune.get(note).pitch();
        }

        /** From the start of the bar. */
        public Beats start(int note) {
            return tune.get(note).start();
        }

        public Beats end(int note) {
            return tune.get(note).start().plus(tune.get(note).beats());
        }

        /** With what comes before the bar that follows it. */
        private SongBar with(SongBar pickup) {
            List<TuneBars.NotePart> both = new ArrayList<>(tune);
            pickup.tune.stream()
                    .map(piece -> new TuneBars.NotePart(
                            piece.pitch(), beats.plus(piece.start()), piece.beats(), piece.held()))
                    .forEach(both::add);
            return new SongBar(chords, both, beats.plus(pickup.beats), slots);
        }

        /** Whether its first note goes on from the bar before. */
        public boolean beginsHeld() {
            return !tune.isEmpty() && tune.get(0).held();
        }
    }

    /** A chord from its start in the bar. */
    public record Struck(Chord chord, Beats start, boolean held) {}

    public static SectionMusic of(Section section, SongHead head) {
        List<WrittenBar> chords = section.chords();
        List<WrittenBar> tune = section.tune();
        List<List<ChordBars.Slot>> slots = ChordBars.read(chords, head.key(), new ArrayList<>());
        List<TuneBars.TuneBar> notes = TuneBars.read(tune, new ArrayList<>());
        int before = pickupBars(chords, notes, head);
        List<SongBar> bars = new ArrayList<>();
        for (int i = 0; i < Math.max(chords.size() + before, tune.size()); i++) {
            List<ChordBars.Slot> its = i >= before && i - before < slots.size() ? slots.get(i - before) : List.of();
            Beats full = head.metre().isFree() ? Beats.of(4) : head.metre().bar();
            Beats beats = i < notes.size() && !notes.get(i).beats().isZero()
                    ? notes.get(i).beats()
                    : full;
            bars.add(new SongBar(
                    struck(its, beats), i < notes.size() ? notes.get(i).pieces() : List.of(), beats, its));
        }
        int pickup = beginsShort(bars, head.metre().bar()) ? 1 : 0;
        return new SectionMusic(head.key(), bars, pickup, order(chords, tune, before, bars.size()));
    }

    /** Whether the first bar is a pick-up, with a chord of its own or without. */
    private static boolean beginsShort(List<SongBar> bars, Beats full) {
        if (bars.size() < 2) {
            return false;
        }
        SongBar first = bars.get(0);
        boolean isShort = first.beats().compareTo(bars.get(1).beats()) < 0;
        return isShort && (first.slots().isEmpty() || first.beats().compareTo(full) < 0);
    }

    static int pickupBars(List<WrittenBar> chords, List<TuneBars.TuneBar> notes, SongHead head) {
        boolean isShort = !notes.isEmpty()
                && !notes.get(0).beats().isZero()
                && notes.get(0).beats().compareTo(head.metre().bar()) < 0;
        return isShort && notes.size() == chords.size() + 1 ? 1 : 0;
    }

    private static List<Struck> struck(List<ChordBars.Slot> slots, Beats beats) {
        int shares = slots.stream().mapToInt(ChordBars.Slot::shares).sum();
        List<Struck> struck = new ArrayList<>();
        int before = 0;
        for (ChordBars.Slot slot : slots) {
            if (slot.chord().isPresent()) {
                Beats start = beats.times(before).dividedInto(shares);
                struck.add(new Struck(slot.chord().get().chord(), start, slot.held()));
            }
            before += slot.shares();
        }
        return struck;
    }

    /** By the signs of the tune, or where it has none by those of the chords. */
    private static List<Integer> order(List<WrittenBar> chords, List<WrittenBar> tune, int pickup, int count) {
        boolean byTune = tune.size() == count && tune.stream().anyMatch(SectionMusic::hasSign);
        if (byTune) {
            return PlayingOrder.of(tune);
        }
        List<Integer> order = new ArrayList<>();
        IntStream.range(0, pickup).forEach(order::add);
        PlayingOrder.of(chords).forEach(index -> order.add(index + pickup));
        IntStream.range(chords.size() + pickup, count).forEach(order::add);
        return order;
    }

    static boolean hasSign(WrittenBar bar) {
        return bar.opens() || bar.times() > 0 || !bar.ending().isEmpty();
    }

    /** Its chords in written bars, from one to another, both from 0 and included; a pick-up does not count. */
    public Optional<Progression> progression(int first, int last) {
        List<List<ChordBars.Slot>> slots = full().stream().map(SongBar::slots).toList();
        return slots.isEmpty() || first >= slots.size()
                ? Optional.empty()
                : ChordBars.progression(slots.subList(first, Math.min(slots.size(), last + 1)), key);
    }

    /** Its tune in the same bars; with the pick-up where they begin with the first. */
    public Optional<Melody> melody(int first, int last, SongMetre metre) {
        List<SongBar> some = new ArrayList<>(
                bars.subList(first == 0 ? 0 : first + pickup, Math.min(bars.size(), last + pickup + 1)));
        List<Melody.MelodyNote> notes = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (SongBar bar : some) {
            for (TuneBars.NotePart piece : bar.tune()) {
                add(piece, now, notes);
            }
            now = now.plus(bar.beats());
        }
        Beats before = first == 0 && pickup > 0 ? bars.get(0).beats() : Beats.ZERO;
        return notes.isEmpty()
                ? Optional.empty()
                : Optional.of(new Melody(notes, now, Optional.of(metre.bar()).filter(bar -> !bar.isZero()), before));
    }

    private static void add(TuneBars.NotePart piece, Beats now, List<Melody.MelodyNote> notes) {
        int last = notes.size() - 1;
        Beats start = now.plus(piece.start());
        boolean goesOn = piece.held()
                && last >= 0
                && notes.get(last).pitch().equals(piece.pitch())
                && notes.get(last).end().equals(start);
        notes.add(
                goesOn
                        ? new Melody.MelodyNote(
                                piece.pitch(),
                                notes.get(last).start(),
                                notes.remove(last).beats().plus(piece.beats()))
                        : new Melody.MelodyNote(piece.pitch(), start, piece.beats()));
    }

    /** The indices of a place's bars as they are played: with its repeats where it is the whole section. */
    List<Integer> order(SongPlace place) {
        return place.isWhole()
                ? order
                : IntStream.rangeClosed(
                                place.first() == 0 ? 0 : place.first() + pickup,
                                Math.min(bars.size() - 1, place.last() + pickup))
                        .boxed()
                        .toList();
    }

    /** The same with its repeats played out, so that its bars are in playing order. */
    public SectionMusic playedOut() {
        List<SongBar> played = new ArrayList<>();
        playInto(played);
        return inOrder(key, pickup, played);
    }

    /** A whole song, section after section, with its repeats played out. */
    public static SectionMusic playedOut(Song song) {
        List<SongBar> played = new ArrayList<>();
        int pickup = 0;
        for (Section section : song.sections()) {
            if (played.size() < PlayingOrder.MOST) {
                SectionMusic music = of(song.written(section), song.head());
                pickup = played.isEmpty() ? music.pickup : pickup;
                music.playInto(played);
            }
        }
        return inOrder(song.head().key(), pickup, played);
    }

    private static SectionMusic inOrder(Key key, int pickup, List<SongBar> played) {
        return new SectionMusic(
                key, played, pickup, IntStream.range(0, played.size()).boxed().toList());
    }

    /** A pick-up behind other bars, of a repeat or of the next section, belongs to the bar that it completes. */
    private void playInto(List<SongBar> played) {
        for (int index : order) {
            SongBar bar = bars.get(index);
            played.add(
                    index < pickup && !played.isEmpty()
                            ? played.remove(played.size() - 1).with(bar)
                            : bar);
        }
    }

    /** Its full bars in playing order, counted from 0; a pick-up does not count. */
    public List<Integer> inOrder() {
        return order.stream()
                .map(index -> index - pickup)
                .filter(index -> index >= 0)
                .toList();
    }

    /** How many full bars stand in it as they are written. */
    public int count() {
        return full().size();
    }

    private List<SongBar> full() {
        return bars.subList(pickup, bars.size());
    }
}
