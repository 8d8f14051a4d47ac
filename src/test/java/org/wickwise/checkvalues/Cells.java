package org.wickwise.checkvalues;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Function;
import org.wickwise.Shipped;

/** What the classes of rows need to read inputs and to write answers. */
final class Cells {

    private Cells() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    /** One answer for each item. */
    static ArrayNode each(Iterable<JsonNode> items, Function<JsonNode, JsonNode> answer) {
        ArrayNode answers = JsonNodeFactory.instance.arrayNode();
        items.forEach(item -> answers.add(answer.apply(item)));
        return answers;
    }

    static ArrayNode words(List<String> words) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        words.forEach(array::add);
        return array;
    }

    /** A limit of the shipped rules. */
    static double limit(String name) {
        return Shipped.bench().judge().rulebook().limits().get(name).value();
    }
}
