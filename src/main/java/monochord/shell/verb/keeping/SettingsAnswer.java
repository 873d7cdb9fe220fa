package monochord.shell.verb.keeping;

import java.util.List;
import java.util.Optional;
import monochord.shell.storage.Settings;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;

/** What is settled for good, in rows. */
record SettingsAnswer(Settings settings) implements Answer {
    @Override
    public StyledText text(Look look) {
        Table table = Table.of(
                Table.Column.left(Phrase.of("setting")),
                Table.Column.left(Phrase.of("now")),
                Table.Column.left(Phrase.of("what it is")));
        for (Setting setting : Setting.values()) {
            table.row(Phrase.verb(setting.word()), value(setting), setting.purpose());
        }
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(Phrase.sentence("{0} changes one, for the days to come too.", Phrase.verb(Setting.TEMPO.example())));
        return table.text(look).plus(text.build().wrapped(look.width()));
    }

    private Phrase value(Setting setting) {
        return kept(setting).map(Phrase::typed).orElse(Phrase.of("as usual"));
    }

    private Optional<String> kept(Setting setting) {
        return settings.get(setting.key()).filter(value -> !value.isEmpty());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "settings");
        json.objects(
                "settings",
                List.of(Setting.values()),
                (row, setting) -> row.put("name", setting.word())
                        .put("value", kept(setting).orElse(null)));
    }

    @Override
    public Optional<Answer> noted() {
        return Optional.empty();
    }
}
