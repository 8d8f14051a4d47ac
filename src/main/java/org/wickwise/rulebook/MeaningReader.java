package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.rulebook.Meaning.Clause;
import org.wickwise.rulebook.Meaning.Counted;
import org.wickwise.rulebook.Meaning.FactPattern;
import org.wickwise.rulebook.Meaning.No;
import org.wickwise.rulebook.Meaning.Some;
import org.wickwise.rulebook.MeaningExpression.Compared;
import org.wickwise.rulebook.MeaningExpression.Constant;
import org.wickwise.rulebook.MeaningExpression.Itself;
import org.wickwise.rulebook.MeaningExpression.Joined;
import org.wickwise.rulebook.MeaningExpression.Named;
import org.wickwise.rulebook.MeaningExpression.Part;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.DyeClass;

/** Reads the meaning of a sentence as the vocabulary writes it for the engine. */
final class MeaningReader {

    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(\"[^\"]*\"|\\{[A-Za-z]+}|\\$?[A-Za-z][A-Za-z0-9_]*|\\d+(?:\\.\\d+)?|==|!=|<=|>=|&&|\\|\\||[<>(),:;.])");
    private static final List<Class<? extends Enum<?>>> WORDS = List.of(
            Conclusion.Reading.class,
            Conclusion.Basis.class,
            Conclusion.Fit.class,
            Conclusion.Separation.class,
            Conclusion.PackingKind.class,
            Behaviour.class,
            DyeClass.class);

    private final String text;
    private final List<String> tokens = new ArrayList<>();
    private int at;

    private MeaningReader(String text) {
        this.text = text;
        Matcher matcher = TOKEN.matcher(text);
        int end = 0;
        while (matcher.lookingAt() || matcher.find()) {
            if (matcher.start() != end) {
                throw unreadable(text.substring(end));
            }
            tokens.add(matcher.group(1));
            end = matcher.end();
            matcher.region(end, text.length());
        }
        if (!text.substring(end).isBlank()) {
            throw unreadable(text.substring(end));
        }
    }

    /** @throws IllegalStateException when the vocabulary writes something that this reader does not know */
    static Meaning read(String means) {
        MeaningReader reader = new MeaningReader(means);
        List<Clause> clauses = new ArrayList<>();
        while (reader.at < reader.tokens.size()) {
            clauses.add(reader.clause());
        }
        return new Meaning(clauses);
    }

    private Clause clause() {
        if (take("not")) {
            if (!take("(")) {
                return new No(List.of(pattern()));
            }
            List<FactPattern> patterns = new ArrayList<>(List.of(pattern()));
            while (take("and")) {
                patterns.add(pattern());
            }
            expect(")");
            return new No(patterns);
        }
        return take("accumulate") ? counted() : new Some(pattern());
    }

    /** accumulate($b : Type(...); $all : collectList($b), $n : count($b); CONDITION). */
    private Clause counted() {
        expect("(");
        next();
        expect(":");
        FactPattern pattern = pattern();
        expect(";");
        String countName = "";
        do {
            String name = next();
            expect(":");
            if (next().equals("count")) {
                countName = name;
            }
            expect("(");
            next();
            expect(")");
        } while (take(","));
        expect(";");
        MeaningExpression condition = expression();
        expect(")");
        return new Counted(pattern, countName, condition);
    }

    private FactPattern pattern() {
        String type = next();
        expect("(");
        List<MeaningExpression> conditions = new ArrayList<>();
        Map<String, MeaningExpression> names = new LinkedHashMap<>();
        while (!take(")")) {
            if (peek().startsWith("$")
                    && at + 1 < tokens.size()
                    && tokens.get(at + 1).equals(":")) {
                String name = next();
                expect(":");
                names.put(name, operand());
            } else {
                conditions.add(expression());
            }
            take(",");
        }
        return new FactPattern(type, conditions, names);
    }

    private MeaningExpression expression() {
        List<MeaningExpression> parts = new ArrayList<>(List.of(conjunction()));
        while (take("||")) {
            parts.add(conjunction());
        }
        return parts.size() == 1 ? parts.get(0) : new Joined(parts, false);
    }

    private MeaningExpression conjunction() {
        List<MeaningExpression> parts = new ArrayList<>(List.of(comparison()));
        while (take("&&")) {
            parts.add(comparison());
        }
        return parts.size() == 1 ? parts.get(0) : new Joined(parts, true);
    }

    private MeaningExpression comparison() {
        if (take("(")) {
            MeaningExpression inner = expression();
            expect(")");
            return inner;
        }
        MeaningExpression left = operand();
        if (at < tokens.size() && peek().matches("==|!=|<=|>=|<|>")) {
            String sign = next();
            return new Compared(left, sign, operand());
        }
        return left;
    }

    private MeaningExpression operand() {
        String token = next();
        if (token.startsWith("\"")) {
            return new Constant(token.substring(1, token.length() - 1));
        }
        if (token.matches("\\d.*")) {
            return new Constant(Double.valueOf(token));
        }
        if (token.equals("true") || token.equals("false")) {
            return new Constant(Boolean.valueOf(token));
        }
        boolean isWordOfAKind = Character.isUpperCase(token.charAt(0));
        if (isWordOfAKind) {
            expect(".");
            return new Constant(word(token, next()));
        }
        MeaningExpression start = start(token);
        while (take(".")) {
            start = part(start, next());
        }
        return start;
    }

    private MeaningExpression start(String token) {
        if (token.startsWith("{")) {
            return new Named(token.substring(1, token.length() - 1));
        }
        if (token.startsWith("$")) {
            return new Named(token);
        }
        return token.equals("this") ? new Itself() : part(new Itself(), token);
    }

    private MeaningExpression part(MeaningExpression of, String name) {
        List<MeaningExpression> arguments = new ArrayList<>();
        if (take("(")) {
            while (!take(")")) {
                arguments.add(operand());
                take(",");
            }
        }
        return new Part(of, name, arguments);
    }

    private Object word(String kind, String name) {
        for (Class<? extends Enum<?>> words : WORDS) {
            if (words.getSimpleName().equals(kind)) {
                for (Enum<?> word : words.getEnumConstants()) {
                    if (word.name().equals(name)) {
                        return word;
                    }
                }
            }
        }
        throw unreadable(kind + "." + name);
    }

    private String peek() {
        return tokens.get(at);
    }

    private String next() {
        if (at >= tokens.size()) {
            throw unreadable("its end");
        }
        return tokens.get(at++);
    }

    private boolean take(String token) {
        if (at < tokens.size() && peek().equals(token)) {
            at++;
            return true;
        }
        return false;
    }

    private void expect(String token) {
        if (!take(token)) {
            throw unreadable(at < tokens.size() ? peek() : "its end");
        }
    }

    private IllegalStateException unreadable(String found) {
        return new IllegalStateException("the meaning `" + text + "` cannot be read at `" + found + "`");
    }
}
