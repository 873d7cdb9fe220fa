package monochord.bank;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Writes a SoundFont: an instrument for each program, a zone for each note.
 *
 * <p>Source: SoundFont Technical Specification 2.04, Creative Technology, 2006, sections 4 to 8; the numbers of generators
 * and their units: section 8.1.
 */
final class BankWriter {
    private static final int PAN = 17;
    private static final int HOLD = 35;
    private static final int DECAY = 36;
    private static final int SUSTAIN = 37;
    private static final int RELEASE = 38;
    private static final int INSTRUMENT = 41;
    private static final int KEY_RANGE = 43;
    private static final int SAMPLE = 53;
    private static final int SAMPLE_MODES = 54;
    private static final int FINE_TUNE = 52;
    private static final int ROOT = 58;

    private static final int SILENT = 1000;
    private static final double ENVELOPE_DECIBELS = 100;
    private static final int MOST_TIMECENTS = 8000;
    private static final int MIDDLE = 64;
    /** How far a key an octave and a half from the middle is to its side, in thousandths of half the width. */
    private static final double PAN_PER_KEY = 4;

    /** Samples behind each end, by the specification. */
    private static final int SILENCE = 46;

    private static final int GUARD = 8;

    private final ByteArrayOutputStream samples = new ByteArrayOutputStream();
    private final ByteArrayOutputStream headers = new ByteArrayOutputStream();
    private final ByteArrayOutputStream presets = new ByteArrayOutputStream();
    private final ByteArrayOutputStream presetZones = new ByteArrayOutputStream();
    private final ByteArrayOutputStream presetGenerators = new ByteArrayOutputStream();
    private final ByteArrayOutputStream instruments = new ByteArrayOutputStream();
    private final ByteArrayOutputStream zones = new ByteArrayOutputStream();
    private final ByteArrayOutputStream generators = new ByteArrayOutputStream();

    /**
     * A note and the keys that play it.
     *
     * @param release seconds until it is 100 decibels softer once the key is let go; 0 where it sounds to its end
     */
    record Zone(Note note, int from, int to, double release) {}

    /** Begins a program; the zones that follow belong to it. */
    void program(String name, int bank, int program) {
        int number = instruments.size() / 22;
        write(presets, text(name, 20), words(program, bank, presetZones.size() / 4), new byte[12]);
        write(presetZones, words(presetGenerators.size() / 4, 0));
        write(presetGenerators, words(INSTRUMENT, number));
        write(instruments, text(name, 20), words(zones.size() / 4));
    }

    void zone(Zone zone) {
        write(zones, words(generators.size() / 4, 0));
        generator(KEY_RANGE, zone.from() | zone.to() << 8);
        if (zone.release() > 0) {
            Note note = zone.note();
            generator(PAN, (int) StrictMath.rint(PAN_PER_KEY * (note.root() - MIDDLE)));
            if (note.falls() > 0) {
                generator(
                        HOLD, timecents(note.sound().loopStart() / note.sound().rate()));
                generator(DECAY, timecents(ENVELOPE_DECIBELS / note.falls()));
                generator(SUSTAIN, SILENT);
            }
            generator(RELEASE, timecents(zone.release()));
            generator(SAMPLE_MODES, 1);
        } else {
            generator(RELEASE, timecents(ENVELOPE_DECIBELS));
        }
        sample(zone.note());
    }

    private void sample(Note note) {
        Sound sound = note.sound();
        int rate = (int) StrictMath.rint(sound.rate());
        double cents = note.cents() + 1200 * StrictMath.log(rate / sound.rate()) / StrictMath.log(2);
        generator(FINE_TUNE, (int) StrictMath.rint(-cents));
        generator(ROOT, note.root());
        generator(SAMPLE, headers.size() / 46);
        int start = samples.size() / 2;
        double[] heard = sound.played((sound.wave().length + GUARD + 0.5) / sound.rate());
        for (double value : heard) {
            write(samples, words((int) StrictMath.rint(32_767 * value)));
        }
        write(samples, new byte[2 * SILENCE]);
        write(headers, text(note.name(), 20), number(start), number(start + heard.length));
        write(headers, number(start + sound.loopStart()), number(start + sound.loopEnd()), number(rate));
        write(headers, new byte[] {(byte) note.root(), 0}, words(0, 1));
    }

    private void generator(int kind, int amount) {
        write(generators, words(kind, amount));
    }

    private static int timecents(double seconds) {
        return (int) Math.min(MOST_TIMECENTS, StrictMath.rint(1200 * StrictMath.log(seconds) / StrictMath.log(2)));
    }

    /** @param licence of the source, carried in the file */
    byte[] bytes(String licence) {
        byte[] info = list(
                "INFO",
                chunk("ifil", words(2, 1)),
                chunk("isng", terminated("EMU8000")),
                chunk("INAM", terminated("Monochord")),
                chunk("ICOP", terminated("Copyright 2000-2002, 2008 Frank Wen; 2008 Toby Smithe")),
                chunk("ICMT", terminated(licence)),
                chunk("ISFT", terminated("src/bank/cut")));
        byte[] body = join(
                "sfbk".getBytes(StandardCharsets.US_ASCII),
                info,
                list("sdta", chunk("smpl", samples.toByteArray())),
                tables());
        return chunk("RIFF", body);
    }

    private byte[] tables() {
        write(presets, text("EOP", 20), words(0, 0, presetZones.size() / 4), new byte[12]);
        write(presetZones, words(presetGenerators.size() / 4, 0));
        write(presetGenerators, new byte[4]);
        write(instruments, text("EOI", 20), words(zones.size() / 4));
        write(zones, words(generators.size() / 4, 0));
        write(generators, new byte[4]);
        write(headers, text("EOS", 20), new byte[26]);
        return list(
                "pdta",
                chunk("phdr", presets.toByteArray()),
                chunk("pbag", presetZones.toByteArray()),
                chunk("pmod", new byte[10]),
                chunk("pgen", presetGenerators.toByteArray()),
                chunk("inst", instruments.toByteArray()),
                chunk("ibag", zones.toByteArray()),
                chunk("imod", new byte[10]),
                chunk("igen", generators.toByteArray()),
                chunk("shdr", headers.toByteArray()));
    }

    private static byte[] list(String form, byte[]... chunks) {
        return chunk("LIST", join(form.getBytes(StandardCharsets.US_ASCII), join(chunks)));
    }

    private static byte[] chunk(String name, byte[] content) {
        byte[] whole = join(name.getBytes(StandardCharsets.US_ASCII), number(content.length), content);
        return Arrays.copyOf(whole, whole.length + (content.length & 1));
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        write(out, parts);
        return out.toByteArray();
    }

    private static void write(ByteArrayOutputStream out, byte[]... parts) {
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
    }

    private static byte[] terminated(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return Arrays.copyOf(bytes, bytes.length + 2 - bytes.length % 2);
    }

    private static byte[] text(String text, int length) {
        return Arrays.copyOf(text.getBytes(StandardCharsets.US_ASCII), length);
    }

    private static byte[] words(int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        return bytes.array();
    }

    private static byte[] number(int value) {
        return ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(value)
                .array();
    }
}
