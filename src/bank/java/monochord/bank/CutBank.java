package monochord.bank;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import monochord.bank.SourceBank.Recording;

/**
 * Cuts the program's sound bank from a large one: a few instruments, a recording for every few keys, each in tune, evened
 * in loudness and ended in a loop. The same source gives the same bytes.
 *
 * <p>Run it by {@code src/bank/cut}, which says what it needs.
 */
public final class CutBank {
    private static final int MIDDLE_C = 60;
    /** Samples a second of what lies below: it has nothing that would need more. */
    private static final int LOW_RATE = 22_050;

    private static final int LOW_C = 36;
    private static final int HIGH_C = 96;
    private static final int PIANO_LOWEST = 21;
    private static final int PIANO_HIGHEST = 108;
    private static final int PERCUSSION = 128;
    /** High and low wood block, which count in. */
    private static final List<Integer> CLICKS = List.of(76, 77);

    private static final double CLICK_SECONDS = 0.3;
    private static final double CLICK_DECIBELS = -20;
    /** The usual level of a note's first half second, below full scale: room for its first blow. */
    private static final double DECIBELS = -22;

    private static final double LEVEL_SECONDS = 0.5;
    /** Decibels a second. */
    private static final double SLOWEST = 2;

    private static final double HIGHEST_PEAK = 0.98;

    private static final List<Instrument> INSTRUMENTS = List.of(
            new Instrument(
                    "Acoustic Grand Piano", 0, 0, PIANO_LOWEST, PIANO_HIGHEST, 2, 4.5, 1.3, 32_000, 0.25, true, 0, 0.7),
            new Instrument("Electric Piano 1", 4, 4, LOW_C, HIGH_C, 4, 2, 0.7, 22_050, 0.1, true, -1, 0.8),
            new Instrument("Vibraphone", 11, 11, LOW_C, HIGH_C, 4, 1, 1, 32_000, 0, true, 0, 2),
            new Instrument("Drawbar Organ", 16, 17, LOW_C, HIGH_C, 4, 1.0, 0.8, 22_050, 0.4, false, -1, 0.3),
            new Instrument("Acoustic Guitar", 24, 24, LOW_C, HIGH_C, 4, 2, 0.6, 22_050, 0.08, true, -1, 0.8),
            new Instrument("Acoustic Bass", 32, 32, 28, HIGH_C, 4, 1.6, 0.6, 22_050, 0.08, true, 1, 0.6),
            new Instrument("String Ensemble", 48, 48, LOW_C, HIGH_C, 4, 1.5, 1.1, 22_050, 0.6, false, -3, 1.2),
            new Instrument("Choir Aahs", 52, 52, LOW_C, HIGH_C, 4, 1.4, 1.1, 22_050, 0.6, false, -3, 1),
            new Instrument("Brass Section", 61, 61, LOW_C, HIGH_C, 4, 1.2, 0.9, 22_050, 0.5, false, -4, 0.5),
            new Instrument("Clarinet", 71, 71, LOW_C, HIGH_C, 4, 1, 1, 32_000, 0, false, -4, 0.4),
            new Instrument("Flute", 73, 73, LOW_C, HIGH_C, 4, 0.5, 0.4, 22_050, 0.18, false, -4, 0.4));

    private final SourceBank source;
    private final BankWriter bank = new BankWriter();

    private CutBank(SourceBank source) {
        this.source = source;
    }

    /**
     * @param arguments the source, the file to write, the file with the source's licence
     * @throws IOException if one cannot be read or the other written
     */
    public static void main(String[] arguments) throws IOException {
        CutBank cut = new CutBank(SourceBank.read(Path.of(arguments[0])));
        INSTRUMENTS.forEach(cut::instrument);
        cut.clicks();
        byte[] bytes = cut.bank.bytes(Files.readString(Path.of(arguments[2])));
        Files.write(Path.of(arguments[1]), bytes);
        System.out.println(bytes.length + " bytes");
    }

    private void instrument(Instrument instrument) {
        List<Note> notes = new ArrayList<>();
        for (int key = instrument.lowest(); key <= instrument.highest(); ) {
            int root = root(instrument, key);
            notes.add(note(instrument, root));
            key = root + instrument.stretch() + 1;
        }
        evened(instrument, notes);
        if (instrument.dies()) {
            dying(notes);
        }
        bank.program(instrument.name(), 0, instrument.program());
        for (int i = 0; i < notes.size(); i++) {
            int from = i == 0 ? 0 : (notes.get(i - 1).root() + notes.get(i).root()) / 2 + 1;
            int to = i == notes.size() - 1
                    ? 127
                    : (notes.get(i).root() + notes.get(i + 1).root()) / 2;
            bank.zone(notes.get(i).zone(from, to, instrument.release()));
        }
    }

    /** The highest recording that reaches down to the key; where none does, one is made there. */
    private int root(Instrument instrument, int key) {
        return source.recordings(0, instrument.source()).stream()
                .mapToInt(Recording::root)
                .filter(root -> Math.abs(root - key) <= instrument.stretch())
                .max()
                .orElse(Math.min(key + instrument.stretch(), instrument.highest()));
    }

    /** The nearest recording, cut for this key: slower or faster where it was made for another. */
    private Note note(Instrument instrument, int root) {
        Recording nearest = source.recordings(0, instrument.source()).stream()
                .min(Comparator.comparingInt(one -> Math.abs(one.root() - root)))
                .orElseThrow();
        double faster = StrictMath.pow(2, (root - nearest.root()) / 12.0);
        Sound sound = nearest.sound().trimmed();
        sound = new Sound(sound.wave(), sound.rate() * faster, sound.loopStart(), sound.loopEnd());
        double falls = instrument.dies() ? nearest.falls() : 0;
        if (instrument.loop() > 0) {
            double share = (double) (root - instrument.lowest()) / (instrument.highest() - instrument.lowest());
            double seconds =
                    instrument.seconds() * StrictMath.pow(instrument.highSeconds() / instrument.seconds(), share);
            Looping.Looped looped =
                    new Looping(seconds, instrument.loop(), 2 * instrument.loop(), instrument.dies()).cut(sound);
            sound = looped.sound();
            falls = Math.max(falls, looped.falls());
        }
        double rate =
                Math.min(sound.rate(), root < MIDDLE_C ? Math.min(LOW_RATE, instrument.rate()) : instrument.rate());
        sound = sound.at(rate);
        return new Note(nearest.name(), root, sound, Tuning.centsOff(sound, root), falls);
    }

    /** Brings each note to the line through the levels of all, and that to the usual level at middle C. */
    private static void evened(Instrument instrument, List<Note> notes) {
        double[] keys = notes.stream().mapToDouble(Note::root).toArray();
        double[] levels = notes.stream()
                .mapToDouble(note -> note.sound().decibels(LEVEL_SECONDS))
                .toArray();
        Line line = Line.through(keys, levels);
        double usual = DECIBELS + instrument.decibels() - line.at(MIDDLE_C);
        double peak = 0;
        for (int i = 0; i < levels.length; i++) {
            double up = line.at(keys[i]) + usual - levels[i];
            Sound sound = notes.get(i).sound().times(StrictMath.pow(10, up / 20));
            notes.set(i, notes.get(i).with(sound));
            peak = Math.max(peak, sound.peak());
        }
        double down = Math.min(1, HIGHEST_PEAK / peak);
        System.out.printf("%-22s %2d notes, peak %.2f%n", instrument.name(), notes.size(), peak);
        notes.replaceAll(note -> note.with(note.sound().times(down)));
    }

    /** Brings how fast each note dies away to the line through all, in the logarithm: neighbours die alike, high notes sooner. */
    private static void dying(List<Note> notes) {
        double[] keys = notes.stream().mapToDouble(Note::root).toArray();
        double[] speeds = notes.stream()
                .mapToDouble(note -> StrictMath.log(Math.max(SLOWEST, note.falls())))
                .toArray();
        Line line = Line.through(keys, speeds);
        notes.replaceAll(note -> note.falling(StrictMath.exp(line.at(note.root()))));
    }

    private void clicks() {
        bank.program("Wood Blocks", PERCUSSION, 0);
        for (Recording recording : source.recordings(PERCUSSION, 0)) {
            if (CLICKS.contains(recording.only())) {
                Sound sound = once(recording.sound());
                Sound level = sound.times(StrictMath.pow(10, (CLICK_DECIBELS - sound.decibels(0.1)) / 20));
                bank.zone(new Note(recording.name(), recording.only(), level, 0, 0).once());
            }
        }
    }

    /** Faded to nothing at its end. */
    private static Sound once(Sound sound) {
        double[] wave = sound.trimmed().played(CLICK_SECONDS);
        int fade = wave.length / 4;
        for (int i = 0; i < fade; i++) {
            wave[wave.length - 1 - i] *= (double) i / fade;
        }
        return new Sound(wave, sound.rate(), wave.length - 1, wave.length);
    }
}
