package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import monochord.Thorough;
import monochord.score.Score;
import monochord.sound.file.WavFile;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Frequencies: equal temperament from A4 = 440 Hz, ISO 16:1975. */
class BankTest {
    private static final int HEADER = 44;
    private static final double A4 = 440;
    private static final int BROKEN = Thorough.times(30, 100);

    @TempDir
    Path folder;

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("bank.sf2"), bytes);
    }

    private String refusal(Path file) {
        String message = assertThrows(IOException.class, () -> Bank.read(file)).getMessage();
        assertTrue(message.startsWith(file + ": "), message);
        return message.substring(file.toString().length() + 2);
    }

    private String refusal(byte[] bytes) throws IOException {
        return refusal(file(bytes));
    }

    private byte[] wav(String pitch, Optional<Bank> bank) throws IOException {
        Path wav = folder.resolve("sound.wav");
        Performance performance = Performance.of(Score.note(Pitch.parse(pitch), Beats.of(2)))
                .at(60)
                .from(bank);
        WavFile.write(performance, wav);
        byte[] bytes = Files.readAllBytes(wav);
        return Arrays.copyOfRange(bytes, HEADER, bytes.length);
    }

    @Test
    void itsSoundsAreHeardInTune() throws IOException {
        Bank bank = Bank.read(file(TinyBank.file()));
        assertEquals("bank.sf2", bank.name());
        Spectrum own = new Spectrum(Spectrum.mono(wav("A4", Optional.of(bank)), 0.5, 1.5));
        assertTrue(Math.abs(own.centsOff(A4)) <= 5, () -> own.centsOff(A4) + " cents off");
        assertTrue(own.decibelsOver(A4, 2 * A4) > 40, () -> "a sine has no octave: " + own.decibelsOver(A4, 2 * A4));
        Spectrum piano = new Spectrum(Spectrum.mono(wav("A4", Optional.empty()), 0.5, 1.5));
        assertTrue(piano.decibelsOver(A4, 2 * A4) < 40, "the piano has");
    }

    @Test
    void whatItDoesNotHoldComesFromOurs() throws IOException {
        Bank bank = Bank.read(file(TinyBank.file()));
        Performance organ =
                Performance.of(Score.note(Pitch.parse("A4"), Beats.ONE)).with(Patch.parse("church organ"));
        Path one = folder.resolve("one.wav");
        Path other = folder.resolve("other.wav");
        WavFile.write(organ, one);
        WavFile.write(organ.from(Optional.of(bank)), other);
        assertEquals(-1, Files.mismatch(one, other));
    }

    @Test
    void saysWhatIsWrong() throws IOException {
        byte[] bank = TinyBank.file();
        assertEquals("there is no such file", refusal(folder.resolve("nowhere.sf2")));
        assertEquals("is a folder, not a file", refusal(Files.createDirectory(folder.resolve("sounds"))));
        assertEquals("is neither a SoundFont nor a DLS bank", refusal(new byte[0]));
        assertEquals("is neither a SoundFont nor a DLS bank", refusal("RIFF....WAVEfmt ".getBytes()));
        assertEquals(
                "is cut off: it should have " + bank.length + " bytes and has 5000",
                refusal(Arrays.copyOf(bank, 5000)));
        Path huge = folder.resolve("huge.sf2");
        try (RandomAccessFile sparse = new RandomAccessFile(huge.toFile(), "rw")) {
            sparse.setLength(3L << 30);
        }
        assertEquals("has 3072 MB; at most 1024 are read", refusal(huge));
        if (Files.exists(Path.of("/dev/zero"))) {
            assertEquals("is no file that could hold a sound bank", refusal(Path.of("/dev/zero")));
        }
    }

    /** The header says the truth about the length, and what follows is cut off, or noise. */
    @Test
    void whatOnlyBeginsAsABankIsRefused() throws IOException {
        byte[] bank = TinyBank.file();
        for (int length : new int[] {12, 13, 40, 100, 300, bank.length - 100, bank.length - 47}) {
            byte[] cut = Arrays.copyOf(bank, length);
            putLength(cut);
            assertTrue(
                    refusal(cut).matches("is broken|holds no instrument.*|breaks off in the middle"), "at " + length);
        }
        byte[] noise = new byte[20_000];
        new Random(1).nextBytes(noise);
        System.arraycopy(bank, 0, noise, 0, 12);
        putLength(noise);
        assertTrue(refusal(noise).matches("is broken|holds no instrument.*|breaks off in the middle"));
    }

    private static void putLength(byte[] file) {
        for (int i = 0; i < 4; i++) {
            file[4 + i] = (byte) (file.length - 8 >> 8 * i);
        }
    }

    /** Whatever stands in it, a bank is read or refused, and played or refused, in bounded time. */
    @Test
    void noBankIsTooBrokenForAnAnswer() {
        Random chance = new Random(20261125);
        int read = 0;
        for (int i = 0; i < BROKEN; i++) {
            byte[] bank = TinyBank.file();
            int tables = bank.length - 700;
            for (int flips = 1 + chance.nextInt(4); flips > 0; flips--) {
                bank[
                                12
                                        + (chance.nextInt(4) == 0
                                                ? chance.nextInt(bank.length - 12)
                                                : tables - 12 + chance.nextInt(700))] =
                        (byte) chance.nextInt(256);
            }
            read += isPlayed(bank) ? 1 : 0;
        }
        int played = read;
        assertTrue(played > BROKEN / 10 && played < BROKEN, () -> played + " of " + BROKEN + " could be played");
    }

    private boolean isPlayed(byte[] bank) {
        try {
            wav("C4", Optional.of(Bank.read(file(bank))));
            return true;
        } catch (IOException refused) {
            return false;
        }
    }
}
