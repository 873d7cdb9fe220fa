package monochord.shell.sound;

import java.util.List;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/**
 * The MIDI keyboards that are there.
 *
 * @param names in the order in which they are numbered
 * @param connected the one that is listened to, empty if none is
 * @param remark what to do, or what was done; empty for nothing
 */
public record KeyboardsAnswer(List<String> names, String connected, Phrase remark) implements Answer {
    public KeyboardsAnswer {
        names = List.copyOf(names);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.lines(table().text(look));
        if (!remark.isEmpty()) {
            text.line(remark);
        }
        return text.build().wrapped(look.width());
    }

    private Table table() {
        Table table = Table.of(Column.right(Phrase.NOTHING), Column.left(), Column.left());
        for (int i = 0; i < names.size(); i++) {
            boolean here = names.get(i).equals(connected);
            Style style = here ? Style.STRONG : Style.PLAIN;
            table.row(
                    Phrase.of("{0}", i + 1).styled(style),
                    Phrase.typed(names.get(i)).styled(style),
                    here ? Phrase.of("connected").styled(Style.QUIET) : Phrase.NOTHING);
        }
        return table;
    }

    @Override
    public void json(Json json) {
        json.put("kind", "keyboards").put("keyboards", names).put("connected", connected.isEmpty() ? null : connected);
    }
}
