package monochord.view.advice;

import monochord.harmony.colour.Idea;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** One change that was asked for by name. */
public record AskedIdeaAnswer(Idea idea) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder reasons = StyledText.builder(look.reader());
        idea.reasons().forEach(reasons::line);
        IdeaText.tune(idea).ifPresent(reasons::line);
        StyledText.Builder end = StyledText.builder(look.reader())
                .line(IdeaText.WHAT_NEXT, Style.QUIET)
                .line(idea.source(), Style.QUIET)
                .line(Phrase.sentence("Agree each changed chord with the band first."), Style.QUIET);
        return StyledText.builder(look.reader())
                .line(Phrase.of("In {0}", idea.plain().key()), Style.HEADING)
                .build()
                .plus(new IdeaText(idea).rows(look))
                .plus(reasons.build().wrapped(look.width()))
                .plus(new IdeaText(idea).keyboards(look))
                .plus(end.build().wrapped(look.width()));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "recolour")
                .put("key", idea.plain().key().toString())
                .put("idiom", idea.name())
                .put("first", idea.first())
                .put("last", idea.last())
                .put("symbols", idea.progression().chords())
                .put("numerals", IdeaText.numerals(idea.progression()))
                .put("reasons", idea.reasons())
                .put("source", idea.source().toString());
    }
}
