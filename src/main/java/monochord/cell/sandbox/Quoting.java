package monochord.cell.sandbox;

import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Finds music that stands in a cell as it would at the line, without the quotation marks that Java wants. */
record Quoting(int place, String music) {
    private static final String ENDS = "(),;={}";
    private static final Key ANY = Key.major(NoteName.C);
    private static final String BEGINNINGS = "[A-GIVN1-7][^.\"]*|[b#♭♯][IViv1-7][^.\"]*";

    /** What stands there between two marks of Java, or null where that is no music. */
    static Quoting around(String text, int place) {
        int begin = Math.min(place, text.length());
        while (begin > 0 && ENDS.indexOf(text.charAt(begin - 1)) < 0) {
            begin--;
        }
        int end = Math.min(Math.max(place, begin), text.length());
        while (end < text.length() && ENDS.indexOf(text.charAt(end)) < 0) {
            end++;
        }
        String said = text.substring(begin, end).replace('\'', ' ');
        String music = said.strip();
        return isMusic(music) ? new Quoting(begin + said.indexOf(music), music) : null;
    }

    private static boolean isMusic(String said) {
        try {
            return said.matches(BEGINNINGS) && read(said) != null;
        } catch (Unreadable no) {
            return false;
        }
    }

    private static Music read(String said) {
        return MusicText.read(said, ANY);
    }

    SnippetFailure trouble() {
        return new SnippetFailure("Music stands in quotation marks in Java: \"" + music + "\".", place, 0);
    }
}
