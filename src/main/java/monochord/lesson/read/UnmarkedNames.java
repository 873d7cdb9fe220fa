package monochord.lesson.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.lesson.Fault;
import monochord.lesson.Trouble;
import monochord.text.Phrase;
import monochord.text.naming.InProse;
import monochord.text.naming.Renaming;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;

/**
 * Finds the notes and chords in a lesson's text that are not marked as such, so that a reader who says La or H for them
 * would read the English names. A lesson with unmarked names can be taken all the same.
 *
 * <p>An A before a small word is passed over, for it is mostly an article.
 */
public final class UnmarkedNames {
    /** Some other naming, for what changes in it is a name. */
    private static final Signs OTHER_NAMES = Signs.MUSIC.with(NoteNaming.LATIN);

    private static final Pattern MARKED = Pattern.compile("`[^`]*`|\\$\\{[^}]*}");
    private static final Pattern FENCE = Pattern.compile(" {0,3}(?:```|~~~).*");
    private static final Pattern ARTICLE = Pattern.compile("A[*_]* [a-z].*");
    private static final String HEAD = "---";

    private final Faults faults;
    private boolean inHead;
    private boolean inFence;

    private UnmarkedNames(Faults faults) {
        this.faults = faults;
    }

    /**
     * The faults of that kind in a lesson file; none where it cannot be read.
     *
     * @param path how the faults name the file
     */
    public static List<Fault> in(Path file, String path) {
        Faults faults = new Faults(path);
        UnmarkedNames names = new UnmarkedNames(faults);
        new Source(new Faults(path)).lines(file).orElse(List.of()).forEach(names::read);
        return faults.inOrder();
    }

    private void read(SourceLine line) {
        if (line.text().equals(HEAD) && (inHead || line.number() == 1)) {
            inHead = !inHead;
        } else if (FENCE.matcher(line.text()).matches()) {
            inFence = !inFence;
        } else if (!inHead && !inFence) {
            names(line.text()).forEach(name -> fault(line, name));
        }
    }

    private static List<Renaming> names(String text) {
        List<Renaming> names = new ArrayList<>(InProse.changes(text, OTHER_NAMES));
        Matcher marked = MARKED.matcher(text);
        while (marked.find()) {
            names.removeIf(name -> name.from() >= marked.start() && name.to() <= marked.end());
        }
        names.removeIf(name -> ARTICLE.matcher(text.substring(name.from())).matches());
        return names;
    }

    private void fault(SourceLine line, Renaming name) {
        String written = line.text().substring(name.from(), name.to());
        Phrase what = Phrase.of("\"{0}\" is a note's name without its mark", Phrase.quoted(written));
        Phrase instead = Phrase.of(
                "write {0}, or {1} if it is none",
                Phrase.typed("${" + written + "}"), Phrase.typed("${text " + written + "}"));
        faults.in(line, 0, new Trouble(name.from(), what, instead));
    }
}
