package monochord.shell.manual;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.shell.sentence.Usage;
import monochord.shell.verb.Verbs;

/** What a shell of the system needs to complete a sentence: a script in its own language. */
public enum ShellCompletion {
    BASH {
        @Override
        String script(List<Usage> usages) {
            return """
                    _monochord() {
                        local word=${COMP_WORDS[COMP_CWORD]} words
                        if [ "$COMP_CWORD" -eq 1 ]; then
                            words=%s
                        else
                            case ${COMP_WORDS[1]} in
                    %s            *) words=%s ;;
                            esac
                        fi
                        COMPREPLY=($(compgen -W "$words" -- "$word"))
                    }
                    complete -o default -F _monochord monochord
                    """.formatted(
                            quoted(row(verbsAndOptions(usages))),
                            usages.stream()
                                    .map(usage -> "            %s) words=%s ;;\n"
                                            .formatted(usage.word(), quoted(row(behind(usage)))))
                                    .collect(Collectors.joining()),
                            quoted(row(programOptions())));
        }
    },
    ZSH {
        @Override
        String script(List<Usage> usages) {
            return """
                    #compdef monochord
                    local -a verbs options
                    verbs=(
                    %s)
                    options=(
                    %s)
                    if (( CURRENT == 2 )); then
                        _describe verb verbs
                        _describe option options
                        return
                    fi
                    case $words[2] in
                    %s    *) compadd -- %s ;;
                    esac
                    _files
                    """.formatted(
                    usages.stream()
                            .map(usage ->
                                    described(usage.word(), usage.purpose().toString()))
                            .collect(Collectors.joining()),
                    Arrays.stream(ProgramOption.values())
                            .map(option ->
                                    described(option.word(), option.purpose().toString()))
                            .collect(Collectors.joining()),
                    usages.stream()
                            .map(usage -> "    %s) compadd -- %s ;;\n".formatted(usage.word(), each(behind(usage))))
                            .collect(Collectors.joining()),
                    each(programOptions()));
        }

        private String described(String word, String purpose) {
            return "    " + quoted(word.replace(":", "\\:") + ":" + purpose) + "\n";
        }
    },
    FISH {
        @Override
        String script(List<Usage> usages) {
            List<String> lines = new ArrayList<>();
            for (Usage usage : usages) {
                lines.add("complete -c monochord -n __fish_use_subcommand -a " + usage.word() + " -d "
                        + quoted(usage.purpose().toString()));
                String here = "complete -c monochord -n '__fish_seen_subcommand_from " + usage.word() + "'";
                behind(usage).stream()
                        .filter(word -> !programOptions().contains(word))
                        .forEach(word -> lines.add(here + " -a " + quoted(word)));
            }
            for (ProgramOption option : ProgramOption.values()) {
                lines.add("complete -c monochord -l " + option.word().substring(2)
                        + (option.choices().isEmpty() ? "" : " -x -a " + quoted(row(option.choices())))
                        + " -d " + quoted(option.purpose().toString()));
            }
            return String.join("\n", lines) + "\n";
        }
    };

    abstract String script(List<Usage> usages);

    /** The script for all verbs. */
    public String script(Verbs verbs) {
        return script(verbs.all().stream().map(verb -> verb.usage()).toList());
    }

    /** The shell of that name, if we know it. */
    public static Optional<ShellCompletion> of(String name) {
        return Arrays.stream(values())
                .filter(shell -> shell.name().equalsIgnoreCase(name))
                .findFirst();
    }

    static List<String> names() {
        return Arrays.stream(values())
                .map(shell -> shell.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** What can stand somewhere behind that verb, small words and options. */
    private static List<String> behind(Usage usage) {
        return Stream.of(
                        usage.words().stream(),
                        usage.smallWords().stream(),
                        usage.options().stream().map(name -> "--" + name),
                        Stream.of(ProgramOption.values())
                                .filter(ProgramOption::isWithAVerb)
                                .map(ProgramOption::word))
                .flatMap(words -> words)
                .distinct()
                .toList();
    }

    private static List<String> programOptions() {
        return Arrays.stream(ProgramOption.values()).map(ProgramOption::word).toList();
    }

    private static List<String> verbsAndOptions(List<Usage> usages) {
        return Stream.concat(usages.stream().map(Usage::word), programOptions().stream())
                .toList();
    }

    private static String row(List<String> words) {
        return String.join(" ", words);
    }

    private static String each(List<String> words) {
        return words.stream().map(ShellCompletion::quoted).collect(Collectors.joining(" "));
    }

    /** In single quotes, as all three shells read them. */
    private static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }
}
