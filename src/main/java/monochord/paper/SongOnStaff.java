package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import monochord.song.Section;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongMetre;
import monochord.song.WrittenBar;
import monochord.text.Phrase;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;
import monochord.view.staff.Clef;
import monochord.view.staff.NoteLength;
import monochord.view.staff.NoteValue;
import monochord.view.staff.RhythmSpelling;
import monochord.view.staff.StaffBar;
import monochord.view.staff.StaffColumn;
import monochord.view.staff.StaffEvent;
import monochord.view.staff.StaffMusic;

/**
 * The sections of a song on a staff for one player: tune, chord symbols, words; where no tune is written, slashes. A tune
 * that would lie far off the staff is written an octave higher or lower.
 */
public final class SongOnStaff {
    private static final int OCTAVE = 7;

    private final Song song;
    private final PlayerPart part;
    private final Interval up;

    private SongOnStaff(Song song, PlayerPart part) {
        this.song = song;
        this.part = part;
        this.up = part.up().plus(new Interval(0, octaves()));
    }

    public static StaffMusic of(Song song, PlayerPart part) {
        return new SongOnStaff(song, part).music();
    }

    /** How many octaves a tune is moved so that it stands on the staff; 0 for most. */
    static int octaves(Song song, PlayerPart part) {
        return new SongOnStaff(song, part).octaves();
    }

    private Clef clef() {
        return part.isLow() ? Clef.BASS : Clef.TREBLE;
    }

    private int octaves() {
        int[] heights = song.music().written().notes().stream()
                .mapToInt(note -> note.pitch().staffPosition() + part.up().staffSteps())
                .toArray();
        if (heights.length == 0) {
            return 0;
        }
        return IntStream.of(0, -1, 1, -2, 2)
                .boxed()
                .min((one, other) -> Integer.compare(ledgers(heights, one), ledgers(heights, other)))
                .orElse(0);
    }

    private int ledgers(int[] heights, int octaves) {
        return IntStream.of(heights)
                .map(height -> clef().ledgerLines(height + OCTAVE * octaves))
                .sum();
    }

    private StaffMusic music() {
        List<StaffBar> bars = new ArrayList<>();
        for (Section section : song.sections()) {
            if (!section.isAgain()) {
                bars.addAll(section(section));
            }
        }
        if (bars.isEmpty()) {
            bars.add(StaffBar.of(List.of(StaffColumn.of(List.of(), NoteValue.FREE)), StaffBar.BarLine.SINGLE));
        }
        StaffBar last = bars.remove(bars.size() - 1);
        bars.add(last.end() == StaffBar.BarLine.REPEAT ? last : last.with(StaffBar.BarLine.FINAL));
        Optional<SongMetre> metre = Optional.of(song.head().metre()).filter(known -> !known.isFree());
        return new StaffMusic(part.title(), part.key().signature(), metre, List.of(clef()), bars);
    }

    private List<StaffBar> section(Section section) {
        SectionMusic all = SectionMusic.of(section, song.head());
        List<SectionMusic.SongBar> music = all.bars();
        Sung sung = new Sung(section);
        List<StaffBar> bars = new ArrayList<>();
        for (int i = 0; i < music.size(); i++) {
            SectionMusic.SongBar bar = music.get(i);
            boolean goesOn = i + 1 < music.size() && music.get(i + 1).beginsHeld();
            StaffBar staff = StaffBar.of(columns(bar, goesOn, sung), StaffBar.BarLine.SINGLE)
                    .numbered(Math.max(0, i + 1 - all.pickup()));
            StaffBar named = i == 0 ? staff.named(Phrase.typed(section.name())) : staff;
            bars.add(written(section, music.size(), i)
                    .map(signs -> signed(named, signs))
                    .orElse(named));
            sung.endBar(i);
        }
        StaffBar last = bars.remove(bars.size() - 1);
        bars.add((last.end() == StaffBar.BarLine.SINGLE ? last.with(StaffBar.BarLine.DOUBLE) : last).endingLine());
        return bars;
    }

    /** The bar of the chords or, where these have no signs, of the tune. */
    private static Optional<WrittenBar> written(Section section, int count, int index) {
        List<WrittenBar> chords = section.chords();
        int skipped = count - chords.size();
        boolean bySign = chords.stream().anyMatch(bar -> bar.opens() || bar.times() > 0);
        if (!chords.isEmpty() && skipped <= 1 && (bySign || section.tune().size() != count)) {
            return index < skipped ? Optional.empty() : Optional.of(chords.get(index - skipped));
        }
        return index < section.tune().size() ? Optional.of(section.tune().get(index)) : Optional.empty();
    }

    private static StaffBar signed(StaffBar bar, WrittenBar signs) {
        StaffBar signed = signs.opens() ? bar.with(StaffBar.Before.REPEAT) : bar;
        signed = signs.times() > 0
                ? signed.with(StaffBar.BarLine.REPEAT)
                : signs.endsPart() ? signed.with(StaffBar.BarLine.DOUBLE) : signed;
        signed = signs.ending().isEmpty() ? signed : signed.inEnding(signs.ending());
        return signs.endsLine() ? signed.endingLine() : signed;
    }

    private List<StaffColumn> columns(SectionMusic.SongBar bar, boolean goesOn, Sung sung) {
        TreeMap<Beats, StaffEvent> events = new TreeMap<>();
        if (bar.pieces() == 0) {
            slashes(bar, events);
        }
        Beats now = Beats.ZERO;
        for (int note = 0; note < bar.pieces(); note++) {
            rests(now, bar.start(note), events);
            boolean held = note == 0 && bar.beginsHeld();
            List<Phrase> syllables = held ? List.of() : sung.next();
            boolean tied = note + 1 == bar.pieces() && goesOn;
            note(bar, note, syllables, tied, events);
            now = bar.end(note);
        }
        if (bar.pieces() > 0) {
            rests(now, bar.beats(), events);
        }
        return columns(bar, events);
    }

    private void note(
            SectionMusic.SongBar bar,
            int note,
            List<Phrase> syllables,
            boolean tied,
            TreeMap<Beats, StaffEvent> events) {
        Pitch pitch = bar.pitch(note).plus(up);
        List<RhythmSpelling.Spelled> values =
                RhythmSpelling.of(bar.start(note), bar.end(note), song.head().metre());
        for (int i = 0; i < values.size(); i++) {
            StaffEvent event = StaffEvent.notes(
                    StaffEvent.Voice.ONLY, List.of(pitch), values.get(i).length());
            event = i == 0 && !syllables.isEmpty() ? event.singing(syllables) : event;
            events.put(values.get(i).at(), i + 1 < values.size() || tied ? event.held() : event);
        }
    }

    private void rests(Beats from, Beats to, TreeMap<Beats, StaffEvent> events) {
        if (to.compareTo(from) > 0) {
            for (RhythmSpelling.Spelled value :
                    RhythmSpelling.of(from, to, song.head().metre())) {
                events.put(value.at(), StaffEvent.rest(StaffEvent.Voice.ONLY, value.length()));
            }
        }
    }

    /** One for each beat. */
    private void slashes(SectionMusic.SongBar bar, TreeMap<Beats, StaffEvent> events) {
        boolean threes = song.head().metre().isCompound();
        NoteLength length = threes ? new NoteLength(NoteValue.QUARTER, 1, 1, 1) : NoteLength.of(NoteValue.QUARTER);
        for (Beats at = Beats.ZERO; at.compareTo(bar.beats()) < 0; at = at.plus(length.beats())) {
            events.put(
                    at,
                    new StaffEvent(StaffEvent.Voice.ONLY, StaffEvent.Kind.SLASH, List.of(), length, false, List.of()));
        }
    }

    /** Symbols stand over what begins with them, or by themselves. */
    private List<StaffColumn> columns(SectionMusic.SongBar bar, TreeMap<Beats, StaffEvent> events) {
        TreeMap<Beats, StaffColumn> columns = new TreeMap<>();
        events.forEach((at, event) -> columns.put(at, StaffColumn.of(at, List.of(event))));
        Interval interval = song.head().key().tonic().to(part.key().tonic());
        for (SectionMusic.Struck struck : bar.chords()) {
            if (!struck.held()) {
                StaffColumn column = columns.getOrDefault(struck.start(), StaffColumn.of(struck.start(), List.of()));
                columns.put(struck.start(), column.under(struck.chord().plus(interval)));
            }
        }
        return List.copyOf(columns.values());
    }
}
