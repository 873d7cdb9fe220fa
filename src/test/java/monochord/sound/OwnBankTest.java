package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.score.Score;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bank that comes with the program. Frequencies: equal temperament from A4 = 440 Hz, ISO 16:1975. */
class OwnBankTest {
    private static final String FOLDER = "/monochord/";
    private static final int RATE = 44_100;
    private static final int PIANO = 0;
    /** Keys from C2 to C7: whatever the program lays out, and a tune above it. */
    private static final int LOWEST = 36;

    private static final int HIGHEST = 96;

    private static byte[] file(String name) throws IOException {
        try (InputStream in = OwnBankTest.class.getResourceAsStream(FOLDER + name)) {
            return in.readAllBytes();
        }
    }

    private static final BankFile BANK = bank();

    private static BankFile bank() {
        try {
            return new BankFile(file("sounds.sf2"));
        } catch (IOException unread) {
            throw new IllegalStateException(unread);
        }
    }

    @Test
    void isSmallAndCarriesItsLicence() throws IOException {
        assertTrue(file("sounds.sf2").length < 6_000_000);
        String licence = new String(file("sounds-licence.txt"), StandardCharsets.UTF_8);
        for (String words : List.of("Frank Wen", "Toby Smithe", "Permission is hereby granted, free of charge")) {
            assertTrue(licence.contains(words), words);
        }
        assertEquals(licence, BANK.text("ICMT"));
        assertEquals("Copyright 2000-2002, 2008 Frank Wen; 2008 Toby Smithe", BANK.text("ICOP"));
    }

    @Test
    void noRecordingIsStretchedByMoreThanFourHalfSteps() {
        assertEquals(12, BANK.programs().size(), "eleven instruments and the wood blocks");
        for (BankFile.Program program : BANK.programs()) {
            int lowest = program.number() == PIANO ? 21 : LOWEST;
            int highest = program.number() == PIANO ? 108 : HIGHEST;
            for (int key = lowest; !program.isPercussion() && key <= highest; key++) {
                List<BankFile.Zone> zones = program.zones(key);
                assertEquals(1, zones.size(), program + ", key " + key);
                int away = Math.abs(zones.get(0).root() - key);
                assertTrue(away <= 4, program + ", key " + key + " is " + away + " half steps from its recording");
            }
        }
    }

    /** From the last sample of a loop to its first the sound goes on as it goes inside the loop: no step, no corner. */
    @Test
    void noLoopClicksWhereItBegins() {
        int loops = 0;
        for (BankFile.Program program : BANK.programs()) {
            for (BankFile.Zone zone : program.zones()) {
                if (zone.isLooped()) {
                    double[] turn = zone.twiceAround();
                    int seam = turn.length / 2;
                    double step = largestBend(turn, seam - 2, seam + 2);
                    double usual = largestBend(turn, 2, seam - 2);
                    assertTrue(
                            step <= 1.2 * usual, program + ", " + zone + ": bends by " + step + ", elsewhere " + usual);
                    loops++;
                }
            }
        }
        assertTrue(loops > 100, "only " + loops + " loops were seen");
    }

    /** The second difference: what a step and what a corner make large. */
    private static double largestBend(double[] wave, int from, int to) {
        double largest = 0;
        for (int i = from; i < to; i++) {
            largest = Math.max(largest, Math.abs(wave[i + 1] - 2 * wave[i] + wave[i - 1]));
        }
        return largest;
    }

    @Test
    void everySoundOfGeneralMidiIsPlayedByOneItHas() {
        Set<Integer> had = BANK.programs().stream()
                .filter(program -> !program.isPercussion())
                .map(BankFile.Program::number)
                .collect(Collectors.toSet());
        for (Patch patch : Patch.all()) {
            Patch player = OwnBank.player(patch, Optional.empty());
            assertTrue(had.contains(player.number() - 1), patch + " is played by " + player);
            assertEquals(had.contains(patch.number() - 1), player.equals(patch), patch::toString);
        }
        Stream.of("piano", "electric piano 1", "organ", "acoustic guitar", "acoustic bass", "strings", "choir")
                .map(Patch::parse)
                .forEach(patch -> assertEquals(patch, OwnBank.player(patch, Optional.empty())));
    }

    private static double[] held(String pitch, String patch, int seconds) throws IOException {
        Performance performance = Performance.of(Score.note(Pitch.parse(pitch), Beats.of(seconds)))
                .at(60)
                .with(Patch.parse(patch));
        float[] samples = new float[2 * seconds * RATE];
        try (Rendering rendering = Rendering.of(performance.sequence(), Optional.empty())) {
            rendering.read(samples);
        }
        double[] mono = new double[samples.length / 2];
        for (int i = 0; i < mono.length; i++) {
            mono[i] = (samples[2 * i] + samples[2 * i + 1]) / 2.0;
        }
        return mono;
    }

    @ParameterizedTest
    @ValueSource(strings = {"piano", "electric piano 1", "vibraphone", "acoustic guitar", "clarinet", "flute"})
    void isInTuneWithinThreeCents(String patch) throws IOException {
        for (int octave = 3; octave <= 5; octave++) {
            for (String letter : List.of("C", "E", "G#", "B")) {
                Pitch pitch = Pitch.parse(letter + octave);
                double[] heard = held(pitch.toString(), patch, 2);
                double[] steady = java.util.Arrays.copyOfRange(heard, RATE / 10, 3 * RATE / 2);
                int cents = new Spectrum(steady).centsOff(pitch.hertz());
                assertTrue(Math.abs(cents) <= 3, () -> patch + ", " + pitch + ": " + cents + " cents");
            }
        }
    }

    /** Levels of half seconds, in decibels. */
    private static double[] levels(double[] sound) {
        double[] levels = new double[2 * sound.length / RATE];
        for (int i = 0; i < levels.length; i++) {
            double sum = 1e-12;
            for (int j = i * RATE / 2; j < (i + 1) * RATE / 2; j++) {
                sum += sound[j] * sound[j];
            }
            levels[i] = 10 * Math.log10(sum / RATE * 2);
        }
        return levels;
    }

    /** Two strings of a key beat, so a level may rise a little on its way down. */
    @Test
    void aHeldPianoNoteDiesAwayAndAHighOneSooner() throws IOException {
        double before = 0;
        for (String pitch : List.of("C2", "C3", "C4", "C5", "C6", "C7")) {
            double[] levels = levels(held(pitch, "piano", 6));
            for (int i = 1; i < levels.length; i++) {
                assertTrue(levels[i] < levels[i - 1] + 2, pitch + " rises: " + java.util.Arrays.toString(levels));
                assertTrue(levels[i] < levels[0] - 2, pitch + " does not fall: " + java.util.Arrays.toString(levels));
            }
            double fallen = levels[0] - levels[6];
            assertTrue(fallen > before, pitch + " falls by " + fallen + " dB in three seconds, the lower by " + before);
            before = fallen;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"organ", "strings", "choir", "brass section", "clarinet", "flute"})
    void whatIsBowedOrBlownLastsAsLongAsTheKeyIsHeld(String patch) throws IOException {
        double[] levels = levels(held("C4", patch, 6));
        assertEquals(levels[2], levels[11], 3, patch);
    }
}
