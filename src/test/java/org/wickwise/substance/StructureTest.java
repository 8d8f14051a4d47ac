package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.openscience.cdk.exception.InvalidSmilesException;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.smiles.SmilesParser;
import org.openscience.cdk.tools.manipulator.AtomContainerManipulator;
import org.wickwise.Shipped;

/** What the SMILES of a solvent says, read by the Chemistry Development Kit, against what its file says. */
class StructureTest {

    private static final double TOLERANCE_GRAM_PER_MOLE = 0.02;
    private static final Set<String> HALOGENS = Set.of("F", "Cl", "Br", "I");

    @TestFactory
    Stream<DynamicTest> theMolarMassFollowsFromTheStructure() {
        return Shipped.data().solvents().stream()
                .filter(StructureTest::isOneSubstance)
                .flatMap(solvent -> structures(solvent).stream()
                        .map(smiles -> DynamicTest.dynamicTest(solvent + ": " + smiles, () -> assertThat(
                                        molarMass(smiles))
                                .isCloseTo(
                                        solvent.number("molar mass").orElseThrow(), within(TOLERANCE_GRAM_PER_MOLE)))));
    }

    @TestFactory
    Stream<DynamicTest> halogenatedIsWhatHasAHalogenInItsStructure() {
        return Shipped.data().solvents().stream()
                .filter(StructureTest::isOneSubstance)
                .flatMap(solvent -> structures(solvent).stream()
                        .map(smiles -> DynamicTest.dynamicTest(
                                solvent + ": " + smiles, () -> assertThat(solvent.value("halogenated")
                                                .orElseThrow()
                                                .texts())
                                        .containsExactly(hasHalogen(smiles) ? "yes" : "no"))));
    }

    /** Two solutions, whose molar mass is that of what is dissolved, and a mixture without a structure. */
    @Test
    void onlySolutionsAndMixturesAreLeftOut() {
        assertThat(Shipped.data().solvents())
                .filteredOn(solvent -> !isOneSubstance(solvent))
                .extracting(Solvent::name)
                .containsExactly("aqueous ammonia", "petroleum ether", "sodium chloride brine");
    }

    /** Isomers of one formula count as one substance; parts separated by a dot do not. */
    private static boolean isOneSubstance(Solvent solvent) {
        return structures(solvent).stream().noneMatch(smiles -> smiles.contains(".") || smiles.equals("none"))
                && solvent.number("molar mass").isPresent();
    }

    private static List<String> structures(Solvent solvent) {
        return solvent.value("SMILES").orElseThrow().texts();
    }

    private static double molarMass(String smiles) {
        return AtomContainerManipulator.getMass(molecule(smiles), AtomContainerManipulator.MolWeight);
    }

    private static boolean hasHalogen(String smiles) {
        for (IAtom atom : molecule(smiles).atoms()) {
            if (HALOGENS.contains(atom.getSymbol())) {
                return true;
            }
        }
        return false;
    }

    private static IAtomContainer molecule(String smiles) {
        try {
            return new SmilesParser(SilentChemObjectBuilder.getInstance()).parseSmiles(smiles);
        } catch (InvalidSmilesException e) {
            throw new AssertionError(smiles + " cannot be read", e);
        }
    }
}
