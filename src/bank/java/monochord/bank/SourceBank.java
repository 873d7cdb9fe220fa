package monochord.bank;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The bank that ours is cut from: its samples, found by program number.
 *
 * <p>Source: SoundFont Technical Specification 2.04, Creative Technology, 2006, sections 4 to 7.
 */
final class SourceBank {
    private static final int PRESET_BYTES = 38;
    private static final int INSTRUMENT_BYTES = 22;
    private static final int SAMPLE_BYTES = 46;
    private static final int RIGHT = 2;
    private static final int NO_ROOT = -1;
    /** Generators. */
    private static final int DECAY = 36;

    private static final int INSTRUMENT = 41;

    private static final int KEY_RANGE = 43;
    private static final int SAMPLE = 53;
    private static final int ROOT = 58;

    /** What an envelope's times are for. */
    private static final double DECIBELS = 100;

    private final ByteBuffer file;
    private final Map<String, ByteBuffer> chunks = new HashMap<>();

    private SourceBank(ByteBuffer file) {
        this.file = file.order(ByteOrder.LITTLE_ENDIAN);
    }

    static SourceBank read(Path path) throws IOException {
        SourceBank bank = new SourceBank(ByteBuffer.wrap(Files.readAllBytes(path)));
        bank.collect(12, bank.file.capacity());
        return bank;
    }

    private void collect(int from, int to) {
        int at = from;
        while (at + 8 <= to) {
            String name = text(file, at, 4);
            int size = file.getInt(at + 4);
            if (name.equals("LIST")) {
                collect(at + 12, at + 8 + size);
            } else {
                chunks.put(name, file.slice(at + 8, size).order(ByteOrder.LITTLE_ENDIAN));
            }
            at += 8 + size + (size & 1);
        }
    }

    private static String text(ByteBuffer from, int at, int most) {
        byte[] bytes = new byte[most];
        from.get(at, bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1).split("\0", 2)[0];
    }

    /**
     * The recordings of a program, each once, of a pair the left one; those that say which one key they are for, with it.
     *
     * @param bank 0 for melody, 128 for percussion
     */
    List<Recording> recordings(int bank, int program) {
        List<Recording> found = new ArrayList<>();
        for (int instrument : instruments(preset(bank, program))) {
            ByteBuffer inst = chunks.get("inst");
            int last = bag(inst, (instrument + 1) * INSTRUMENT_BYTES + 20);
            for (int zone = bag(inst, instrument * INSTRUMENT_BYTES + 20); zone < last; zone++) {
                recording(generators("ibag", "igen", zone), found);
            }
        }
        return found;
    }

    private int preset(int bank, int program) {
        ByteBuffer presets = chunks.get("phdr");
        for (int i = 0; i < presets.capacity() / PRESET_BYTES - 1; i++) {
            if (bag(presets, i * PRESET_BYTES + 20) == program && bag(presets, i * PRESET_BYTES + 22) == bank) {
                return i;
            }
        }
        throw new IllegalArgumentException("the bank has no program " + program + " in bank " + bank);
    }

    private List<Integer> instruments(int preset) {
        ByteBuffer presets = chunks.get("phdr");
        List<Integer> found = new ArrayList<>();
        int last = bag(presets, (preset + 1) * PRESET_BYTES + 24);
        for (int zone = bag(presets, preset * PRESET_BYTES + 24); zone < last; zone++) {
            Integer instrument = generators("pbag", "pgen", zone).get(INSTRUMENT);
            if (instrument != null && !found.contains(instrument)) {
                found.add(instrument);
            }
        }
        return found;
    }

    private void recording(Map<Integer, Integer> zone, List<Recording> found) {
        if (!zone.containsKey(SAMPLE)) {
            return;
        }
        int header = zone.get(SAMPLE) * SAMPLE_BYTES;
        ByteBuffer headers = chunks.get("shdr");
        String name = text(headers, header, 20);
        boolean known = found.stream().anyMatch(one -> one.name().equals(name));
        if (known || headers.getShort(header + 44) == RIGHT || name.endsWith("R")) {
            return;
        }
        int root = zone.getOrDefault(ROOT, (int) headers.get(header + 40));
        int lowest = zone.containsKey(KEY_RANGE) ? zone.get(KEY_RANGE) & 0xFF : NO_ROOT;
        int highest = zone.containsKey(KEY_RANGE) ? zone.get(KEY_RANGE) >> 8 & 0xFF : NO_ROOT;
        double falls = zone.containsKey(DECAY)
                ? DECIBELS / StrictMath.pow(2, zone.get(DECAY).shortValue() / 1200.0)
                : 0;
        found.add(new Recording(name, sound(headers, header), root, lowest == highest ? lowest : NO_ROOT, falls));
    }

    private Sound sound(ByteBuffer headers, int header) {
        int start = headers.getInt(header + 20);
        int end = headers.getInt(header + 24);
        double[] wave = new double[end - start];
        for (int i = 0; i < wave.length; i++) {
            wave[i] = chunks.get("smpl").getShort(2 * (start + i)) / 32_768.0;
        }
        int loopStart = headers.getInt(header + 28) - start;
        int loopEnd = headers.getInt(header + 32) - start;
        return new Sound(wave, headers.getInt(header + 36), loopStart, loopEnd);
    }

    private Map<Integer, Integer> generators(String bags, String kinds, int zone) {
        Map<Integer, Integer> generators = new HashMap<>();
        int last = bag(chunks.get(bags), 4 * (zone + 1));
        for (int i = bag(chunks.get(bags), 4 * zone); i < last; i++) {
            generators.put(bag(chunks.get(kinds), 4 * i), bag(chunks.get(kinds), 4 * i + 2));
        }
        return generators;
    }

    private static int bag(ByteBuffer chunk, int at) {
        return Short.toUnsignedInt(chunk.getShort(at));
    }

    /**
     * A recorded note.
     *
     * @param root the key it was played on, by the bank's word
     * @param only the one key it is used for, or -1 where it is used for several
     * @param falls decibels a second by which its envelope lets it die away
     */
    record Recording(String name, Sound sound, int root, int only, double falls) {}
}
