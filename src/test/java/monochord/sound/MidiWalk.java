package monochord.sound;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a Standard MIDI File byte by byte and fails at the first that does not belong there.
 *
 * <p>Source: Standard MIDI-File Format Spec. 1.1, International MIDI Association: chunks of four letters and a 32-bit
 * length; header of six bytes; delta times of at most four bytes with seven bits each; running status ended by meta
 * events; one end of track, last in its track.
 */
public final class MidiWalk {
    /** @param status the status byte, or the type of a meta event plus 0xFF00 */
    public record Event(int track, long tick, int status, List<Integer> content) {
        /** In hexadecimal, such as {@code 0: 90 3C 50}. */
        @Override
        public String toString() {
            StringBuilder text = new StringBuilder(tick + ": " + Integer.toHexString(status));
            content.forEach(b -> text.append(' ').append(Integer.toHexString(b)));
            return text.toString().toUpperCase(java.util.Locale.ROOT);
        }
    }

    public record File(int format, int division, int trackCount, List<Event> events) {
        List<String> track(int number) {
            return events.stream()
                    .filter(event -> event.track == number)
                    .map(Event::toString)
                    .toList();
        }
    }

    private final ByteBuffer bytes;
    private final List<Event> events = new ArrayList<>();

    private MidiWalk(byte[] file) {
        bytes = ByteBuffer.wrap(file);
    }

    public static File through(byte[] file) {
        return new MidiWalk(file).file();
    }

    private File file() {
        expect("MThd".equals(name()), "the header chunk");
        expect(bytes.getInt() == 6, "a header of six bytes");
        int format = bytes.getShort();
        int tracks = bytes.getShort();
        int division = bytes.getShort();
        expect(format == 0 && tracks == 1 || format == 1 && tracks >= 1, "format 0 with one track, or format 1");
        expect(division > 0, "ticks a quarter, the highest bit clear");
        for (int track = 0; track < tracks; track++) {
            track(track);
        }
        expect(!bytes.hasRemaining(), "the end of the file");
        return new File(format, division, tracks, List.copyOf(events));
    }

    private void track(int number) {
        expect("MTrk".equals(name()), "a track chunk");
        int length = bytes.getInt();
        int end = bytes.position() + length;
        expect(length >= 4 && end <= bytes.limit(), "a length that lies within the file");
        long tick = 0;
        int running = 0;
        boolean over = false;
        while (bytes.position() < end) {
            expect(!over, "nothing after the end of the track");
            tick += variable();
            running = event(number, tick, running);
            over = last().status == 0xFF2F;
        }
        expect(over && bytes.position() == end, "the end of the track where its length says");
    }

    /** The status that keeps running. */
    private int event(int track, long tick, int running) {
        int first = bytes.get(bytes.position()) & 0xFF;
        int status = first >= 0x80 ? bytes.get() & 0xFF : running;
        expect(status >= 0x80, "a status byte, for none is running");
        if (status == 0xFF) {
            meta(track, tick);
            return 0;
        }
        expect(status < 0xF0, "a channel message; this writer sends no system exclusive");
        int kind = status & 0xF0;
        events.add(new Event(track, tick, status, data(kind == 0xC0 || kind == 0xD0 ? 1 : 2)));
        return status;
    }

    private void meta(int track, long tick) {
        int type = bytes.get();
        expect(type >= 0, "a meta type below 128");
        List<Integer> content = new ArrayList<>();
        for (long left = variable(); left > 0; left--) {
            content.add(bytes.get() & 0xFF);
        }
        expect(type != 0x2F || content.isEmpty(), "an end of track without content");
        expect(type != 0x51 || content.size() == 3 && track == 0, "three bytes of tempo, in the first track");
        expect(type != 0x58 || content.size() == 4 && track == 0, "four bytes of time signature, in the first track");
        expect(type != 0x59 || content.size() == 2 && track == 0, "two bytes of key signature, in the first track");
        events.add(new Event(track, tick, 0xFF00 + type, List.copyOf(content)));
    }

    private List<Integer> data(int count) {
        List<Integer> content = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int data = bytes.get();
            expect(data >= 0, "a data byte below 128");
            content.add(data);
        }
        return List.copyOf(content);
    }

    private long variable() {
        long value = 0;
        int count = 0;
        int next;
        do {
            next = bytes.get() & 0xFF;
            expect(++count <= 4, "at most four bytes of a variable-length number");
            expect(count > 1 || next != 0x80, "a variable-length number without idle zeros");
            value = value << 7 | next & 0x7F;
        } while (next >= 0x80);
        return value;
    }

    private Event last() {
        return events.get(events.size() - 1);
    }

    private String name() {
        byte[] letters = new byte[4];
        bytes.get(letters);
        return new String(letters, StandardCharsets.US_ASCII);
    }

    private void expect(boolean fits, String what) {
        if (!fits) {
            throw new AssertionError("expected " + what + " before byte " + bytes.position());
        }
    }
}
