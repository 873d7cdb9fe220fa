package monochord.view.music;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.note.Notated;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.keyboard.Drawing;

/**
 * A progression as symbols and numerals, with a word on each chord that is not the key's own, and drawn.
 *
 * @param oneChord what its letters would be if they were meant as notes
 */
public record ProgressionAnswer(Progression progression, Optional<Chord> oneChord) implements Answer {
    public ProgressionAnswer(Progression progression) {
        this(progression, Optional.empty());
    }

    static List<ChordRow> rows(Progression progression) {
        List<ChordRow> rows = new ArrayList<>();
        for (ChordEvent slot : progression.slots()) {
            if (!slot.held()) {
                rows.add(new ChordRow(slot.chord(), slot.numeral(), progression.key()));
            }
        }
        return rows;
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.of("In {0}", progression.key()), Style.HEADING);
        if (look.plain()) {
            text.line(Phrase.of("Chords: {0}", Phrase.row(progression.symbols())));
            text.line(Phrase.of("Numerals: {0}", Phrase.row(progression.numerals())));
        } else {
            text.lines(chords().inBlocks(look, 0));
        }
        origins().forEach(text::line);
        oneChord.ifPresent(chord -> text.line(
                Phrase.sentence("As the notes of one chord these are {0}; commas between them say so.", chord)));
        return text.build().wrapped(look.width()).plus(Pictures.progression(progression, look));
    }

    /** Symbols over numerals. */
    private Table chords() {
        List<Notated> symbols = progression.symbols();
        return Table.of(symbols.size())
                .row(symbols.stream()
                        .map(symbol -> Phrase.of("{0}", symbol).styled(Style.STRONG))
                        .toList())
                .row(progression.numerals().stream()
                        .map(numeral -> Phrase.of("{0}", numeral))
                        .toList());
    }

    /** A sentence on each chord that is not the key's own. */
    private Set<Phrase> origins() {
        Set<Phrase> said = new LinkedHashSet<>();
        for (ChordRow row : rows(progression)) {
            if (!row.key().isOwn(row.chord())) {
                said.add(Phrase.sentence("{0}, {1}: {2}.", row.chord(), row.numeral(), row.origin()));
            }
        }
        return said;
    }

    @Override
    public List<Drawing> drawings() {
        return Pictures.drawings(progression);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "progression")
                .put("key", progression.key().toString())
                .objects("chords", rows(progression), (object, row) -> row.json(object));
        oneChord.ifPresent(chord -> json.put("oneChord", chord.toString()));
    }
}
