package org.rafterbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The rules of the house: which room may use which, and what stays in one room. */
class HouseRulesTest {

    private static final List<String> ROOMS = List.of(
            "units",
            "airframe",
            "stability",
            "power",
            "flight",
            "rules",
            "review",
            "logbook",
            "exchange",
            "work",
            "ui",
            "app");

    private static JavaClasses house;

    @BeforeAll
    static void readTheHouse() {
        house = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.rafterbook");
    }

    @Test
    void aRoomUsesOnlyRoomsAboveIt() {
        Architectures.LayeredArchitecture layers = Architectures.layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true);
        for (String room : ROOMS) {
            layers = layers.layer(room).definedBy("org.rafterbook." + room + "..");
        }
        for (int i = 0; i < ROOMS.size(); i++) {
            List<String> below = ROOMS.subList(i + 1, ROOMS.size());
            layers = below.isEmpty()
                    ? layers.whereLayer(ROOMS.get(i)).mayNotBeAccessedByAnyLayer()
                    : layers.whereLayer(ROOMS.get(i)).mayOnlyBeAccessedByLayers(below.toArray(new String[0]));
        }
        layers.check(house);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.rafterbook.(**)").should().beFreeOfCycles().check(house);
    }

    @Test
    void sqlStaysInTheLogbook() {
        noClasses()
                .that(resideInAPackage("org.rafterbook..")
                        .and(resideInAPackage("org.rafterbook.logbook..").negate()))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..", "org.flywaydb..")
                .check(house);
    }

    @Test
    void javaFxStaysInTheUi() {
        noClasses()
                .that(resideInAPackage("org.rafterbook..")
                        .and(resideInAPackage("org.rafterbook.ui..").negate()))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx..", "org.controlsfx..")
                .check(house);
    }

    @Test
    void testLibrariesAreNotUsed() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.commons.math3..", "org.ejml..")
                .check(house);
    }
}
