package monochord.song;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/** Moves a song to another key, bar by bar as it is written. */
final class SongTransposition {
    private static final String WHERE = "Key";
    private static final Pattern NOTE = Pattern.compile("(?<!\\S)([A-Ga-g][b#x]{0,2})(-?\\d{1,2})?(?=[:\\s]|$)");

    private final Interval up;

    private SongTransposition(Interval up) {
        this.up = up;
    }

    static Song move(Song song, Key to, Interval up, String why) {
        SongTransposition moving = new SongTransposition(up);
        List<Section> sections = song.sections().stream().map(moving::section).toList();
        List<SongChange> changes = new ArrayList<>(song.changes());
        changes.add(new SongChange(WHERE, song.head().key().toString(), to.toString(), why));
        return new Song(song.head().in(to), song.intro(), sections, changes, song.faults(), song.remarks());
    }

    private Section section(Section section) {
        Optional<Pitch> first = TuneBars.read(section.tune(), new ArrayList<>()).stream()
                .flatMap(bar -> bar.pieces().stream())
                .map(TuneBars.NotePart::pitch)
                .findFirst();
        List<Section.Part> parts = new ArrayList<>();
        for (Section.Part part : section.parts()) {
            if (part instanceof Section.ChordBlock block) {
                parts.add(new Section.ChordBlock(block.bars().stream()
                        .map(bar -> bar.with(chords(bar.text())))
                        .toList()));
            } else if (part instanceof Section.TuneBlock block) {
                parts.add(new Section.TuneBlock(tune(block.bars(), first)));
            } else {
                parts.add(part);
            }
        }
        return new Section(section.name(), section.line(), parts);
    }

    /** Chord symbols are moved; numbers, numerals, cues and signs stay. */
    private String chords(String bar) {
        return ChordBars.TOKEN.matcher(bar).replaceAll(found -> Matcher.quoteReplacement(chord(found.group())));
    }

    private String chord(String token) {
        String mark = token.endsWith("!") ? "!" : "";
        try {
            boolean isChord = token.charAt(0) >= 'A' && token.charAt(0) <= 'G' && !ChordBars.isSilence(token);
            return isChord
                    ? Chord.parse(token.substring(0, token.length() - mark.length()))
                                    .plus(up)
                            + mark
                    : token;
        } catch (Unreadable stays) {
            return token;
        }
    }

    /** A note without an octave is the nearest to the one before, and stays so; the first gets its octave. */
    private List<WrittenBar> tune(List<WrittenBar> bars, Optional<Pitch> first) {
        List<WrittenBar> moved = new ArrayList<>();
        boolean isFirst = true;
        for (WrittenBar bar : bars) {
            StringBuilder text = new StringBuilder();
            Matcher note = NOTE.matcher(bar.text());
            while (note.find()) {
                String octave = note.group(2) != null
                        ? note.group(2)
                        : isFirst && first.isPresent()
                                ? String.valueOf(first.get().octave())
                                : "";
                note.appendReplacement(text, moved(note.group(1), octave));
                isFirst = false;
            }
            moved.add(bar.with(note.appendTail(text).toString()));
        }
        return moved;
    }

    private String moved(String name, String octave) {
        String letter = name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
        return octave.isEmpty()
                ? NoteName.parse(letter).plus(up).toString()
                : Pitch.parse(letter + octave).plus(up).toString();
    }
}
