package monochord.view.advice;

import monochord.harmony.colour.Idea;
import monochord.harmony.colour.Recolour;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Look;

/** The best combination of changes: the row before and after, and each change with its reason. */
public record CombinationText(Recolour recolour) {
    private static final String ITEM = "   ";

    StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader())
                .line(Phrase.row(recolour.progression().symbols()))
                .line(Phrase.row(recolour.best().symbols()), Style.STRONG)
                .line(Phrase.row(recolour.best().numerals()), Style.QUIET);
        for (Idea idea : recolour.combined()) {
            text.line(IdeaText.inOneLine(idea));
            text.add(ITEM).add(idea.reasons().get(0)).end();
            IdeaText.tune(idea).ifPresent(tune -> text.add(ITEM).add(tune).end());
        }
        return text.build().wrapped(look.width());
    }
}
