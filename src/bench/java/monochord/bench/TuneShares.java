package monochord.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import monochord.harmony.ChordFunction;
import monochord.harmony.Progression;
import monochord.harmony.key.KeyCounts;
import monochord.harmony.key.KeyFinding;
import monochord.harmony.melody.Melody;
import monochord.harmony.tune.HarmonicMetre;
import monochord.harmony.tune.Harmonisation;
import monochord.harmony.tune.Harmonisation.HarmonisedSlot;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongMusic.ChordChange;
import monochord.song.SongMusic.Timeline;
import monochord.song.abc.AbcBook;
import monochord.song.abc.AbcReader;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Beats;

/**
 * How often {@code key of} and {@code harmonise} agree with books of tunes: reads every ABC file of a folder and prints
 * shares. Tunes are taken as they are written, repeats once. A book's key is what it says behind {@code K:}, its chord in a
 * slot what sounds as the slot begins.
 *
 * <p>A tune counts for keys if it has 16 notes, chords if it has four different changes. With a second argument
 * {@code held-out} only every fifth tune is read, by the CRC-32 of {@code file:number}; with {@code others} the rest.
 * With a third, {@code wrong}, each tune whose key is missed is listed.
 */
public final class TuneShares {
    private static final int FEWEST_NOTES = 16;
    private static final int FEWEST_CHORDS = 4;
    private static final int PART = 5;

    private final KeyCounts counts = Lists.keyCounts();
    private final boolean listsWrong;
    private final Share majorOrMinor = new Share("key of a tune in major or minor: tonic and mode");
    private final Share signature = new Share("  the same: right notes, perhaps another tonic");
    private final Share oneKey = new Share("key of a tune: heard as in one key throughout");
    private final Share otherModes = new Share("key of a tune in another mode: tonic and mode");
    private final Share amongKeys = new Share("  the same: among the keys that are named");
    private final Share progressions = new Share("key of a progression: tonic and mode");
    private final Share roots = new Share("chords under a tune, key given: root, by time");
    private final Share triads = new Share("  triad");
    private final Share functions = new Share("  function");
    private final Share firstThree = new Share("  root among the first three");

    /** How much of something held. */
    private static final class Share {
        private final String name;
        private double all;
        private double right;

        Share(String name) {
            this.name = name;
        }

        void add(boolean isRight, double weight) {
            all += weight;
            right += isRight ? weight : 0;
        }

        void print() {
            System.out.printf("%-52s %6.1f of 100 (of %.0f)%n", name, 100 * right / all, all);
        }
    }

    private TuneShares(boolean listsWrong) {
        this.listsWrong = listsWrong;
    }

    /** @param args a folder; then perhaps {@code all}, {@code held-out} or {@code others}; then perhaps {@code wrong} */
    public static void main(String[] args) throws IOException {
        String which = args.length > 1 ? args[1] : "all";
        TuneShares shares = new TuneShares(Arrays.asList(args).contains("wrong"));
        try (Stream<Path> files = Files.walk(Path.of(args[0]))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".abc"))
                    .sorted()
                    .toList()) {
                shares.read(file, tune -> which.equals("all") || isHeldOut(file, tune) == which.equals("held-out"));
            }
        }
        shares.print();
    }

    private static boolean isHeldOut(Path file, AbcBook.Tune tune) {
        CRC32 sum = new CRC32();
        sum.update((file.getFileName() + ":" + tune.number()).getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return sum.getValue() % PART == 0;
    }

    private void read(Path file, Predicate<AbcBook.Tune> taken) throws IOException {
        AbcBook book = AbcBook.of(SongFile.text(file, file.toString()));
        for (AbcBook.Tune tune : book.tunes()) {
            if (taken.test(tune)) {
                Song song = AbcReader.read(book, tune);
                measure(song, file.getFileName() + ":" + tune.number());
            }
        }
    }

    private void measure(Song song, String name) {
        Timeline music = song.music().written();
        Key key = song.head().key();
        if (music.notes().size() >= FEWEST_NOTES) {
            keyOfTune(melody(music, bar(song)), key, name);
        }
        if (music.chords().stream().map(ChordChange::chord).distinct().count() >= 2
                && music.chords().size() >= FEWEST_CHORDS) {
            keyOfChords(music, key, name);
            if (!song.head().metre().isFree() && !music.notes().isEmpty()) {
                chords(music, key, HarmonicMetre.parse(song.head().metre().toString()));
            }
        }
    }

    private static Optional<Beats> bar(Song song) {
        return song.head().metre().isFree()
                ? Optional.empty()
                : Optional.of(song.head().metre().bar());
    }

    private static Melody melody(Timeline music, Optional<Beats> bar) {
        List<Melody.MelodyNote> notes = music.notes().stream()
                .map(note -> new Melody.MelodyNote(note.pitch(), note.start(), note.beats()))
                .toList();
        return new Melody(notes, music.beats(), bar, music.pickup());
    }

    private void keyOfTune(Melody tune, Key key, String name) {
        KeyFinding found = KeyFinding.of(tune, counts);
        boolean isRight = found.key().equals(key);
        if (key.mode() == Mode.IONIAN || key.mode() == Mode.AEOLIAN) {
            majorOrMinor.add(isRight, 1);
            signature.add(found.key().signature() == key.signature(), 1);
        } else {
            otherModes.add(isRight, 1);
            amongKeys.add(found.keys().stream().anyMatch(likely -> likely.key().equals(key)), 1);
        }
        oneKey.add(found.ofTune().size() == 1, 1);
        if (listsWrong && found.ofTune().size() > 1) {
            System.out.println("changes " + name + ": " + found.ofTune());
        }
        wrong("tune", isRight, name, key, found);
    }

    private void keyOfChords(Timeline music, Key key, String name) {
        KeyFinding found = KeyFinding.of(Progression.of(timed(music), key), counts);
        boolean isRight = found.key().equals(key);
        progressions.add(isRight, 1);
        wrong("chords", isRight, name, key, found);
    }

    /** A chord as often as it lasts quarters, so that its length counts. */
    private static List<Chord> timed(Timeline music) {
        List<Chord> chords = new ArrayList<>();
        for (int i = 0; i < music.chords().size(); i++) {
            Beats end =
                    i + 1 < music.chords().size() ? music.chords().get(i + 1).start() : music.beats();
            long times = Math.max(
                    1, Math.round(number(end.minus(music.chords().get(i).start()))));
            for (int k = 0; k < times; k++) {
                chords.add(music.chords().get(i).chord());
            }
        }
        return chords;
    }

    private void wrong(String what, boolean isRight, String name, Key key, KeyFinding found) {
        if (listsWrong && !isRight) {
            System.out.println(what + " " + name + ": " + key + ", not " + found.key());
        }
    }

    private void chords(Timeline music, Key key, HarmonicMetre metre) {
        Harmonisation found = Harmonisation.of(melody(music, Optional.of(metre.bar())), key, metre, counts.chords());
        double pickup = number(music.pickup());
        for (HarmonisedSlot slot : found.slots()) {
            sounding(music, slot.start() + pickup).ifPresent(book -> slot(slot, book, key));
        }
    }

    private void slot(HarmonisedSlot slot, Chord book, Key key) {
        double time = number(slot.beats());
        Chord ours = slot.offer().chord();
        boolean isRoot = ours.root().equals(book.root());
        roots.add(isRoot, time);
        triads.add(isRoot && ours.kind().triad().equals(book.kind().triad()), time);
        functions.add(
                ChordFunction.of(ours, key).main()
                        == ChordFunction.of(book, key).main(),
                time);
        firstThree.add(
                isRoot
                        || slot.others().stream()
                                .anyMatch(other -> other.chord().root().equals(book.root())),
                time);
    }

    private static Optional<Chord> sounding(Timeline music, double at) {
        Optional<Chord> last = Optional.empty();
        for (ChordChange change : music.chords()) {
            if (number(change.start()) <= at + 1e-9) {
                last = Optional.of(change.chord());
            }
        }
        return last;
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }

    private void print() {
        List.of(
                        majorOrMinor,
                        signature,
                        oneKey,
                        otherModes,
                        amongKeys,
                        progressions,
                        roots,
                        triads,
                        functions,
                        firstThree)
                .stream()
                .filter(share -> share.all > 0)
                .forEach(Share::print);
    }
}
