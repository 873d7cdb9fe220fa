package monochord.song.musicxml;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScorePartwise.Part;
import org.audiveris.proxymusic.ScorePartwise.Part.Measure;
import org.audiveris.proxymusic.Transpose;

/** Walks through the measures of one part and keeps its tune, its chords and its key. */
final class SheetReading {
    private static final int FARTHEST_TRANSPOSITION = 48;
    private static final int MOST_SIGNS = 7;

    private final ScorePartwise score;
    private final Set<Phrase> remarks = new LinkedHashSet<>();
    private final TuneReading tune = new TuneReading(remarks);
    private final ChordsReading chords = new ChordsReading(remarks);
    private final List<Beats> bars = new ArrayList<>();
    private BigDecimal divisions = BigDecimal.ONE;
    private Interval sounding = Interval.UNISON;
    private Key key;
    private Beats barStart = Beats.ZERO;
    private Beats now = Beats.ZERO;
    private Beats reached = Beats.ZERO;

    SheetReading(ScorePartwise score) {
        this.score = score;
    }

    LeadSheet sheet() throws SheetFault {
        for (Measure measure : part().getMeasure()) {
            measure(measure);
        }
        BarLengths lengths = BarLengths.of(bars);
        Key concert = key();
        return new LeadSheet(
                title(),
                concert,
                tune.melody(lengths, sounding),
                chords.progression(lengths, concert, sounding),
                List.copyOf(remarks));
    }

    /** The first part with notes; one with chord symbols goes before one without. */
    private Part part() throws SheetFault {
        List<Part> parts =
                score.getPart().stream().filter(part -> holds(part, Note.class)).toList();
        if (parts.isEmpty()) {
            throw new SheetFault(Phrase.of("no notes stand in it"));
        }
        Part first = parts.stream()
                .filter(part -> holds(part, Harmony.class))
                .findFirst()
                .orElseThrow(() -> new SheetFault(Phrase.of("no chord symbols stand over its notes")));
        if (parts.size() > 1) {
            remarks.add(Phrase.sentence("Only the first part with chord symbols is read."));
        }
        return first;
    }

    private static boolean holds(Part part, Class<?> kind) {
        return part.getMeasure().stream()
                .anyMatch(measure -> measure.getNoteOrBackupOrForward().stream().anyMatch(kind::isInstance));
    }

    private void measure(Measure measure) throws SheetFault {
        barStart = reached;
        now = reached;
        for (Object part : measure.getNoteOrBackupOrForward()) {
            take(part);
            reached = reached.longerOf(now);
        }
        bars.add(reached.minus(barStart));
    }

    private void take(Object part) throws SheetFault {
        if (part instanceof Note note) {
            note(note);
        } else if (part instanceof Harmony harmony) {
            harmony(harmony);
        } else if (part instanceof Attributes attributes) {
            attributes(attributes);
        } else if (part instanceof Forward forward) {
            go(Figures.beats(forward.getDuration(), divisions));
        } else if (part instanceof Backup backup) {
            Beats back = Figures.beats(backup.getDuration(), divisions);
            now = back.compareTo(now.minus(barStart)) > 0 ? barStart : now.minus(back);
        } else if (part instanceof Barline line && line.getRepeat() != null) {
            remarks.add(Phrase.sentence("Repeats are not played out: each bar is read once."));
        }
    }

    private void go(Beats beats) throws SheetFault {
        now = Figures.counted(now.plus(beats));
    }

    private void note(Note note) throws SheetFault {
        if (note.getGrace() != null || note.getCue() != null) {
            remarks.add(Phrase.sentence("Grace and cue notes are left out."));
            return;
        }
        Beats beats = Figures.beats(note.getDuration(), divisions);
        tune.take(note, now, beats);
        if (note.getChord() == null) {
            go(beats);
        }
    }

    private void harmony(Harmony harmony) throws SheetFault {
        BigDecimal offset =
                harmony.getOffset() == null ? null : harmony.getOffset().getValue();
        Beats later = offset == null || offset.signum() < 0 ? Beats.ZERO : Figures.beats(offset, divisions);
        Key written = key == null ? Key.major(NoteName.C) : key;
        chords.take(HarmonyChord.of(harmony, written), now.plus(later));
    }

    private void attributes(Attributes attributes) throws SheetFault {
        divisions = attributes.getDivisions() == null ? divisions : attributes.getDivisions();
        for (org.audiveris.proxymusic.Key one : attributes.getKey()) {
            key(one);
        }
        for (Transpose one : attributes.getTranspose()) {
            Interval moved = transposition(one);
            if (!moved.equals(sounding) && !bars.isEmpty()) {
                throw new SheetFault(Phrase.of("its transposition changes in bar {0}", bars.size() + 1));
            }
            sounding = moved;
        }
    }

    private void key(org.audiveris.proxymusic.Key written) throws SheetFault {
        if (key != null) {
            remarks.add(Phrase.sentence("The key changes on the way; all is read in the first."));
            return;
        }
        int fifths = Figures.whole(written.getFifths(), MOST_SIGNS, Phrase.of("a key signature"));
        Mode mode = mode(written.getMode());
        key = new Key(NoteName.at(fifths - mode.flattest() + Mode.IONIAN.flattest()), mode);
    }

    private Mode mode(String written) {
        try {
            return Mode.parse(written == null ? "major" : written.toLowerCase(Locale.ROOT));
        } catch (Unreadable unreadable) {
            remarks.add(Phrase.sentence("Its mode is not one of the seven; major is taken."));
            return Mode.IONIAN;
        }
    }

    private static Interval transposition(Transpose written) throws SheetFault {
        int halfSteps = Figures.whole(written.getChromatic(), FARTHEST_TRANSPOSITION, Phrase.of("a transposition"));
        int letters = written.getDiatonic() == null
                ? Math.round(halfSteps * 7 / 12f)
                : Figures.whole(written.getDiatonic(), FARTHEST_TRANSPOSITION, Phrase.of("a transposition"));
        int octaves = Figures.whole(written.getOctaveChange(), 4, Phrase.of("a transposition"));
        return new Interval(7 * halfSteps - 12 * letters, 7 * letters - 4 * halfSteps + octaves);
    }

    private Key key() throws SheetFault {
        Key written = key == null ? Key.major(NoteName.C) : key;
        NoteName tonic = written.tonic().plus(sounding);
        if (Math.abs(tonic.fifths()) > 30) {
            throw new SheetFault(Phrase.of("its transposition leads to no key"));
        }
        return new Key(tonic, written.mode());
    }

    private String title() {
        String work = score.getWork() == null ? null : score.getWork().getWorkTitle();
        String title = work != null ? work : score.getMovementTitle();
        return title == null ? "" : SafeText.oneLine(title.strip());
    }
}
