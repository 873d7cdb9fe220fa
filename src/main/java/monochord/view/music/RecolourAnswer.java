package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.colour.Idea;
import monochord.harmony.colour.Reason;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.FitNote;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Beats;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * Ideas for colouring a progression, and the best of them together.
 *
 * @param remarks what is to be known about how the chords and the tune were read
 */
public record RecolourAnswer(Recolour recolour, List<String> remarks) implements Answer {
    private static final int SHOWN = 6;
    private static final int PER_PLACE = 2;
    private static final int IN_JSON = 200;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        text.line("In " + recolour.progression().key().write(Signs.MUSIC), Style.HEADING);
        text.line(recolour.progression().symbols(Signs.MUSIC), Style.STRONG);
        List<Idea> shown = shown();
        if (shown.isEmpty()) {
            text.line("No change here would sound better than what you have.");
        }
        for (int i = 0; i < shown.size(); i++) {
            idea(i + 1, shown.get(i), look, text);
        }
        together(look, text);
        text.line(
                "Advice from custom, for your ear to decide. Agree each changed chord with the band first.",
                Style.QUIET);
        return text.build().in(look.signs()).wrapped(look.width());
    }

    /** The best ideas that make it better, no more than two for one chord. */
    private List<Idea> shown() {
        List<Idea> shown = new ArrayList<>();
        for (Idea idea : recolour.ideas()) {
            long there = shown.stream().filter(one -> one.at() == idea.at()).count();
            if (idea.score() > 0 && there < PER_PLACE && shown.size() < SHOWN) {
                shown.add(idea);
            }
        }
        return shown;
    }

    private void idea(int number, Idea idea, Look look, StyledText.Builder text) {
        text.line(StyledLine.of(number + ". ")
                .plus(idea.to().write(Signs.MUSIC), Style.STRONG)
                .plus(" for " + idea.from().write(Signs.MUSIC) + ", chord " + (idea.at() + 1) + "  "
                        + idea.fromNumeral().write(Signs.MUSIC) + " → "
                        + idea.toNumeral().write(Signs.MUSIC))
                .plus("  " + idea.colour() + ", score " + idea.score(), Style.QUIET));
        idea.reasons().forEach(reason -> text.line("   - " + reason.sentence()));
        if (!idea.clashes().isEmpty()) {
            text.line("   - In the tune: " + changes(idea, look) + ".");
        }
    }

    private static String changes(Idea idea, Look look) {
        return idea.clashes().stream()
                .map(clash -> clash.pitch().write(Signs.MUSIC)
                        + clash.change()
                                .map(change -> " becomes " + change.to().write(Signs.MUSIC))
                                .orElse(" has nothing near that fits"))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private void together(Look look, StyledText.Builder text) {
        if (recolour.combined().isEmpty()) {
            return;
        }
        text.line("Best together, score " + recolour.gain() + ":", Style.HEADING)
                .line(recolour.best().symbols(Signs.MUSIC), Style.STRONG)
                .line(recolour.best().numerals(Signs.MUSIC))
                .line("play lets you hear it.", Style.QUIET);
    }

    @Override
    public void json(Json json) {
        List<Idea> ideas = recolour.ideas();
        json.put("key", recolour.progression().key().toString())
                .objects("ideas", ideas.subList(0, Math.min(IN_JSON, ideas.size())), this::json)
                .put("best", recolour.best().chords())
                .put("bestNumerals", bestNumerals())
                .put("gain", recolour.gain())
                .put("remarks", remarks);
    }

    private List<String> bestNumerals() {
        return recolour.best().slots().stream()
                .filter(slot -> !slot.held())
                .map(slot -> slot.numeral().toString())
                .toList();
    }

    private void json(Json object, Idea idea) {
        object.put("at", idea.at())
                .put("from", idea.fromNumeral().toString())
                .put("to", idea.toNumeral().toString())
                .put("symbol", idea.to().toString())
                .put("colour", idea.colour().toString())
                .put("score", idea.score())
                .put("reasons", idea.reasons().stream().map(Reason::sentence).toList())
                .objects("changes", idea.clashes(), this::json);
    }

    private void json(Json object, FitNote clash) {
        Beats pickup = recolour.melody().orElseThrow().pickup();
        object.put("at", clash.note())
                .put("beat", number(clash.start()) - number(pickup))
                .put("from", clash.pitch().toString())
                .put("to", clash.change().map(change -> change.to().toString()).orElse(null));
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }
}
