package monochord.view.course;

import java.util.List;
import monochord.practice.Skill;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;

/** What can be asked, by the book that brings it in, a line each with an example. */
public record SkillsAnswer(List<Book> books) implements Answer {
    private static final Key EXAMPLE = Key.major(NoteName.C);

    /**
     * @param number from 1
     * @param title of the book
     */
    public record Book(int number, String title, List<Skill> skills) {
        public Book {
            skills = List.copyOf(skills);
        }
    }

    public SkillsAnswer {
        books = List.copyOf(books);
    }

    @Override
    public StyledText text(Look look) {
        Table table = Table.of(2).indentedBy(2);
        for (Book book : books) {
            table.across(heading(book).styled(Style.HEADING));
            book.skills().forEach(skill -> table.row(skill.title(), example(skill)));
        }
        return StyledText.builder(look.reader())
                .lines(table.text(look))
                .line(
                        Phrase.of("ask puts one question, practise ten; without what stands behind of, any subject."),
                        Style.QUIET)
                .build()
                .wrapped(look.width());
    }

    private static Phrase heading(Book book) {
        return book.title().isEmpty()
                ? Phrase.of("Book {0}", book.number())
                : Phrase.of("{0} {1}", book.number(), Phrase.typed(book.title()));
    }

    private static Phrase example(Skill skill) {
        return Phrase.toType("ask " + skill.id() + " of " + subjects(skill).get(0))
                .styled(Style.TYPED);
    }

    private static List<String> subjects(Skill skill) {
        return skill.subjects(EXAMPLE);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "skills");
        List<Skill> all = books.stream().flatMap(book -> book.skills().stream()).toList();
        json.objects(
                "skills",
                all,
                (object, skill) -> object.put("id", skill.id())
                        .put("title", skill.title().toString())
                        .put("book", book(skill))
                        .put("subjects", subjects(skill)));
    }

    private int book(Skill skill) {
        return books.stream()
                .filter(book -> book.skills().contains(skill))
                .findFirst()
                .orElseThrow()
                .number();
    }
}
