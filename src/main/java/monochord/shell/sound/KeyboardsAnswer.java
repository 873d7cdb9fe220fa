package monochord.shell.sound;

import java.util.List;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

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
        for (int i = 0; i < names.size(); i++) {
            boolean here = names.get(i).equals(connected);
            Phrase name =
                    Phrase.of("{0}  {1}", i + 1, Phrase.typed(names.get(i))).styled(here ? Style.STRONG : Style.PLAIN);
            text.line(here ? Phrase.of("{0}{1}", name, Phrase.of("  connected").styled(Style.QUIET)) : name);
        }
        if (!remark.isEmpty()) {
            text.line(remark);
        }
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("keyboards", names).put("connected", connected.isEmpty() ? null : connected);
    }
}
