package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a song as a Markdown file: a bar line, a line of words, a change each where it was. */
final class SongWriter {
    private final List<String> lines = new ArrayList<>();

    private SongWriter() {}

    static String write(Song song) {
        SongWriter writer = new SongWriter();
        writer.head(song.head());
        writer.prose(song.intro());
        song.sections().forEach(writer::section);
        if (!song.changes().isEmpty()) {
            writer.lines.add("## " + Song.CHANGES);
            writer.lines.add("");
            song.changes().forEach(change -> writer.lines.add("- " + change));
        }
        return writer.lines.stream().collect(Collectors.joining("\n")).stripTrailing() + "\n";
    }

    private void head(SongHead head) {
        lines.add("---");
        field("title", head.title());
        field("by", head.by());
        field(
                "key",
                head.key().isMinor() || !isMajor(head)
                        ? head.key().toString()
                        : head.key().tonic().toString());
        field("metre", head.metre().toString());
        field("tempo", head.tempo() == 0 ? "" : String.valueOf(head.tempo()));
        field("swing", head.swing());
        lines.add("---");
        lines.add("");
    }

    private static boolean isMajor(SongHead head) {
        return head.key().equals(monochord.theory.Key.major(head.key().tonic()));
    }

    private void field(String name, String value) {
        if (!value.isEmpty()) {
            lines.add(name + ": " + value);
        }
    }

    private void prose(List<String> text) {
        if (!text.isEmpty()) {
            lines.addAll(text);
            lines.add("");
        }
    }

    private void section(Section section) {
        lines.add("## " + section.name());
        lines.add("");
        for (Section.Part part : section.parts()) {
            if (part instanceof Section.ChordBlock chords) {
                block("chords", BarLines.write(chords.bars()));
            } else if (part instanceof Section.TuneBlock tune) {
                block("tune", BarLines.write(tune.bars()));
            } else if (part instanceof Section.WordsBlock words) {
                block("words", words.lines());
            } else if (part instanceof Section.Prose prose) {
                prose(prose.lines());
            }
        }
    }

    private void block(String name, List<String> content) {
        lines.add("```" + name);
        lines.addAll(content);
        lines.add("```");
        lines.add("");
    }
}
