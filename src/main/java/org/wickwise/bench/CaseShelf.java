package org.wickwise.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.NamesOfTheTable;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.ShelfReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.FileBeside;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** Reads what a case says of its shelf: a list of solvents, the file of a shelf, or nothing. */
final class CaseShelf {

    private final SolventData data;
    private final Problems problems;

    CaseShelf(SolventData data, Problems problems) {
        this.data = data;
        this.problems = problems;
    }

    /** The shelf of a case, its problems reported; the whole table when the case names none. */
    Shelf shelf(Fields fields) {
        Optional<Node> node = fields.node("shelf");
        if (node.isEmpty()) {
            return Shelf.wholeTable(data, Place.wholeFile(fields.place().file()));
        }
        if (node.get() instanceof Scalar file) {
            return FileBeside.of(Path.of(file.place().file()), file, problems)
                    .map(beside -> new ShelfReader(data, problems).shelf(beside, file.place()))
                    .orElseGet(() -> new Shelf("", List.of(), List.of(), file.place()));
        }
        List<Bottle> bottles = new ArrayList<>();
        for (Scalar name : fields.texts("shelf")) {
            if (data.solvent(name.text()).isEmpty() && name.text().contains("+")) {
                problems.add(
                        name.place(),
                        "the shelf lists the blend `" + name.text() + "`",
                        "bottles, one solvent each",
                        "list its solvents one by one; any blend of them can then be poured");
                continue;
            }
            new NamesOfTheTable(data, problems)
                    .solvent(name.text(), name.place())
                    .ifPresent(solvent -> bottles.add(Bottle.of(solvent, name.place())));
        }
        return new Shelf("", bottles, List.of(), fields.placeOf("shelf"));
    }

    /** The same shelf, its bottles holding the solvents with the shelf's own values. */
    static Shelf restocked(Shelf shelf, SolventData data) {
        List<Bottle> bottles = shelf.bottles().stream()
                .map(bottle -> bottle.holding(Eluent.of(
                        bottle.contents().parts().stream()
                                .map(part -> new Eluent.Part(
                                        data.solvent(part.solvent().name()).orElseThrow(), part.percent()))
                                .toList(),
                        bottle.contents().additions())))
                .toList();
        return new Shelf(shelf.title(), bottles, shelf.ownValues(), shelf.place());
    }
}
