package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.melody.Melody.MelodyNote;
import monochord.theory.note.Beats;
import monochord.theory.note.Signs;

/** Writes a tune: rests where there are gaps, and bar lines where the tune has bars. */
final class MelodyWriting {
    private final Melody melody;
    private final Signs signs;
    private final List<String> tokens = new ArrayList<>();
    private Beats now = Beats.ZERO;
    private Beats line;

    MelodyWriting(Melody melody, Signs signs) {
        this.melody = melody;
        this.signs = signs;
        this.line = melody.pickup().isZero() ? melody.bar().orElse(Beats.ZERO) : melody.pickup();
    }

    String write() {
        if (melody.bar().isPresent() && melody.pickup().isZero()) {
            tokens.add("|");
        }
        for (MelodyNote note : melody.notes()) {
            upTo(note.start(), "r", "r");
            upTo(note.end(), note.pitch().write(signs), ".");
        }
        upTo(melody.beats(), "r", "r");
        return String.join(" ", tokens);
    }

    /** Goes on to {@code end} under one name, and under another behind each bar line on the way. */
    private void upTo(Beats end, String first, String then) {
        String name = first;
        while (now.compareTo(end) < 0) {
            Beats stop = melody.bar().isPresent() && line.compareTo(end) < 0 ? line : end;
            Beats beats = stop.minus(now);
            tokens.add(beats.equals(Beats.ONE) ? name : name + ":" + beats);
            name = then;
            now = stop;
            barLine();
        }
    }

    private void barLine() {
        if (melody.bar().isPresent() && now.equals(line)) {
            tokens.add("|");
            line = line.plus(melody.bar().get());
        }
    }
}
