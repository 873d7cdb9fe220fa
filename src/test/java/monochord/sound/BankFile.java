package monochord.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a SoundFont of one instrument a program and one sample a zone holds, read without the JDK.
 *
 * <p>Source: SoundFont Technical Specification 2.04, 2006.
 */
final class BankFile {
    private static final int KEY_RANGE = 43;
    private static final int SAMPLE = 53;
    private static final int MODES = 54;
    private static final int ROOT = 58;

    private final Map<String, ByteBuffer> chunks = new HashMap<>();
    private final List<Program> programs = new ArrayList<>();

    BankFile(byte[] file) {
        collect(ByteBuffer.wrap(file), 12, file.length);
        ByteBuffer presets = chunks.get("phdr");
        for (int i = 0; i + 1 < presets.capacity() / 38; i++) {
            boolean percussion = presets.getShort(38 * i + 22) == 128;
            programs.add(new Program(presets.getShort(38 * i + 20), percussion, zones(i)));
        }
    }

    private void collect(ByteBuffer file, int from, int to) {
        ByteBuffer bytes = file.order(ByteOrder.LITTLE_ENDIAN);
        int at = from;
        while (at < to) {
            String name = new String(bytes.array(), at, 4, StandardCharsets.US_ASCII);
            int size = bytes.getInt(at + 4);
            if (name.equals("LIST")) {
                collect(bytes, at + 12, at + 8 + size);
            } else {
                chunks.put(name, bytes.slice(at + 8, size).order(ByteOrder.LITTLE_ENDIAN));
            }
            at += 8 + size + size % 2;
        }
    }

    private List<Zone> zones(int instrument) {
        ByteBuffer instruments = chunks.get("inst");
        List<Zone> zones = new ArrayList<>();
        for (int bag = instruments.getShort(22 * instrument + 20); bag < instruments.getShort(22 * instrument + 42); ) {
            Map<Integer, Integer> generators = new HashMap<>();
            ByteBuffer bags = chunks.get("ibag");
            for (int i = bags.getShort(4 * bag); i < bags.getShort(4 * bag + 4); i++) {
                generators.put((int) chunks.get("igen").getShort(4 * i), (int)
                        chunks.get("igen").getShort(4 * i + 2));
            }
            zones.add(new Zone(generators));
            bag++;
        }
        return zones;
    }

    List<Program> programs() {
        return programs;
    }

    String text(String chunk) {
        ByteBuffer bytes = chunks.get(chunk);
        byte[] text = new byte[bytes.capacity()];
        bytes.get(0, text);
        return new String(text, StandardCharsets.UTF_8).replace("\0", "");
    }

    /** @param number from 0 */
    record Program(int number, boolean isPercussion, List<Zone> zones) {
        List<Zone> zones(int key) {
            return zones.stream().filter(zone -> zone.isFor(key)).toList();
        }

        @Override
        public String toString() {
            return "program " + number;
        }
    }

    /** Keys and the sample that sounds on them. */
    final class Zone {
        private final Map<Integer, Integer> generators;

        private Zone(Map<Integer, Integer> generators) {
            this.generators = generators;
        }

        private boolean isFor(int key) {
            return key >= (generators.get(KEY_RANGE) & 0xFF) && key <= generators.get(KEY_RANGE) >> 8;
        }

        int root() {
            return generators.get(ROOT);
        }

        boolean isLooped() {
            return generators.getOrDefault(MODES, 0) == 1;
        }

        /** The samples of the loop, twice. */
        double[] twiceAround() {
            int header = 46 * generators.get(SAMPLE);
            int start = chunks.get("shdr").getInt(header + 28);
            int length = chunks.get("shdr").getInt(header + 32) - start;
            double[] twice = new double[2 * length];
            for (int i = 0; i < twice.length; i++) {
                twice[i] = chunks.get("smpl").getShort(2 * (start + i % length));
            }
            return twice;
        }

        @Override
        public String toString() {
            return "root " + root();
        }
    }
}
