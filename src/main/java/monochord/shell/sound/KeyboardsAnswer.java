package monochord.shell.sound;

import java.util.List;
import monochord.text.Style;
import monochord.text.StyledLine;
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
public record KeyboardsAnswer(List<String> names, String connected, String remark) implements Answer {
    public KeyboardsAnswer {
        names = List.copyOf(names);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        for (int i = 0; i < names.size(); i++) {
            boolean here = names.get(i).equals(connected);
            text.line(StyledLine.of((i + 1) + "  " + names.get(i), here ? Style.STRONG : Style.PLAIN)
                    .plus(here ? "  connected" : "", Style.QUIET));
        }
        if (!remark.isEmpty()) {
            text.line(remark);
        }
        return text.build().in(look.signs()).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        json.put("keyboards", names).put("connected", connected.isEmpty() ? null : connected);
    }
}
