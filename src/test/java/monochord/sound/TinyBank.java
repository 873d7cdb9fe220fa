package monochord.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * A SoundFont of one instrument, a sine that goes on for ever, in tune at A4 = 440 Hz.
 *
 * <p>Source: SoundFont Technical Specification 2.04, 2006; from memory, and read by the JDK.
 */
public final class TinyBank {
    private static final int CYCLE = 100;
    private static final int RATE = 44_000;
    private static final int CYCLES = 40;
    private static final int LOOP_START = 10 * CYCLE;
    private static final int LOOP_END = 30 * CYCLE;
    private static final int A4 = 69;
    private static final int GUARD = 46;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    public static byte[] file() {
        byte[] info = list(
                "INFO", chunk("ifil", words(2, 1)), chunk("isng", text("EMU8000", 8)), chunk("INAM", text("Tiny", 8)));
        byte[] samples = list("sdta", chunk("smpl", samples()));
        byte[] body =
                new TinyBank().raw("sfbk").raw(info).raw(samples).raw(presets()).bytes();
        return chunk("RIFF", body);
    }

    private static byte[] samples() {
        int[] wave = new int[CYCLE * CYCLES + GUARD];
        for (int i = 0; i < CYCLE * CYCLES; i++) {
            wave[i] = (int) Math.round(16_000 * Math.sin(2 * Math.PI * i / CYCLE));
        }
        return words(wave);
    }

    private static byte[] presets() {
        byte[] preset = new TinyBank()
                .raw(text("Sine", 20))
                .raw(words(0, 0, 0))
                .raw(new byte[12])
                .bytes();
        byte[] lastPreset = new TinyBank()
                .raw(text("EOP", 20))
                .raw(words(0, 0, 1))
                .raw(new byte[12])
                .bytes();
        byte[] instrument = new TinyBank().raw(text("Sine", 20)).raw(words(0)).bytes();
        byte[] lastInstrument =
                new TinyBank().raw(text("EOI", 20)).raw(words(2 - 1)).bytes();
        return list(
                "pdta",
                chunk("phdr", join(preset, lastPreset)),
                chunk("pbag", words(0, 0, 1, 0)),
                chunk("pmod", new byte[10]),
                chunk("pgen", words(41, 0, 0, 0)),
                chunk("inst", join(instrument, lastInstrument)),
                chunk("ibag", words(0, 0, 2, 0)),
                chunk("imod", new byte[10]),
                chunk("igen", words(54, 1, 53, 0, 0, 0)),
                chunk(
                        "shdr",
                        join(
                                sample(),
                                new TinyBank()
                                        .raw(text("EOS", 20))
                                        .raw(new byte[26])
                                        .bytes())));
    }

    private static byte[] sample() {
        ByteBuffer header = ByteBuffer.allocate(46).order(ByteOrder.LITTLE_ENDIAN);
        header.put(text("Sine", 20))
                .putInt(0)
                .putInt(CYCLE * CYCLES)
                .putInt(LOOP_START)
                .putInt(LOOP_END)
                .putInt(RATE);
        return header.put((byte) A4)
                .put((byte) 0)
                .putShort((short) 0)
                .putShort((short) 1)
                .array();
    }

    private static byte[] join(byte[] one, byte[] other) {
        return new TinyBank().raw(one).raw(other).bytes();
    }

    private static byte[] list(String form, byte[]... chunks) {
        TinyBank all = new TinyBank().raw(form);
        for (byte[] chunk : chunks) {
            all.raw(chunk);
        }
        return chunk("LIST", all.bytes());
    }

    private static byte[] chunk(String name, byte[] content) {
        byte[] length = ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(content.length)
                .array();
        return new TinyBank().raw(name).raw(length).raw(content).bytes();
    }

    private static byte[] words(int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        return bytes.array();
    }

    private static byte[] text(String text, int length) {
        return java.util.Arrays.copyOf(text.getBytes(StandardCharsets.US_ASCII), length);
    }

    private TinyBank raw(String text) {
        return raw(text.getBytes(StandardCharsets.US_ASCII));
    }

    private TinyBank raw(byte[] bytes) {
        out.writeBytes(bytes);
        return this;
    }

    private byte[] bytes() {
        return out.toByteArray();
    }
}
