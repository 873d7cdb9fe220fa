package monochord.song.musicxml;

import java.util.Locale;
import java.util.Set;

/** What a sheet says of where to go on: in words over its notes, or for players of files. */
final class SheetJumps {
    private SheetJumps() {}

    static void words(String text, Set<SheetBar.RepeatMark> marks) {
        String said = text.toLowerCase(Locale.ROOT).replace(" ", "");
        if (said.startsWith("d.c") || said.startsWith("dacapo")) {
            marks.add(SheetBar.RepeatMark.DA_CAPO);
        } else if (said.startsWith("d.s") || said.startsWith("dalsegno")) {
            marks.add(SheetBar.RepeatMark.DAL_SEGNO);
        } else if (said.equals("fine")) {
            marks.add(SheetBar.RepeatMark.FINE);
        } else if (said.startsWith("tocoda")) {
            toCoda(marks);
        }
    }

    static void sound(SheetElement sound, Set<SheetBar.RepeatMark> marks) {
        add(sound, "segno", SheetBar.RepeatMark.SEGNO, marks);
        add(sound, "coda", SheetBar.RepeatMark.CODA, marks);
        add(sound, "fine", SheetBar.RepeatMark.FINE, marks);
        add(sound, "dacapo", SheetBar.RepeatMark.DA_CAPO, marks);
        add(sound, "dalsegno", SheetBar.RepeatMark.DAL_SEGNO, marks);
        if (sound.attribute("tocoda") != null) {
            toCoda(marks);
        }
    }

    /** The sign that stands where one leaves for the coda looks like the one that stands there. */
    private static void toCoda(Set<SheetBar.RepeatMark> marks) {
        marks.remove(SheetBar.RepeatMark.CODA);
        marks.add(SheetBar.RepeatMark.TO_CODA);
    }

    private static void add(
            SheetElement sound, String attribute, SheetBar.RepeatMark mark, Set<SheetBar.RepeatMark> marks) {
        String value = sound.attribute(attribute);
        if (value != null && !value.equals("no")) {
            marks.add(mark);
        }
    }
}
