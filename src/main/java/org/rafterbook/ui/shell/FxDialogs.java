package org.rafterbook.ui.shell;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.rafterbook.ui.look.Look;

/** The dialogs of the system, over the window. */
public final class FxDialogs implements Dialogs {

    private final Supplier<Window> owner;
    private final Look look;

    public FxDialogs(Supplier<Window> owner, Look look) {
        this.owner = owner;
        this.look = look;
    }

    @Override
    public Optional<Path> open(String title, FileKind... kinds) {
        return Optional.ofNullable(chooser(title, kinds).showOpenDialog(owner.get()))
                .map(File::toPath);
    }

    @Override
    public List<Path> openSeveral(String title, FileKind... kinds) {
        List<File> files = chooser(title, kinds).showOpenMultipleDialog(owner.get());
        return files == null ? List.of() : files.stream().map(File::toPath).toList();
    }

    @Override
    public Optional<Path> save(String title, String suggestedName, FileKind kind) {
        FileChooser chooser = chooser(title, kind);
        chooser.setInitialFileName(suggestedName);
        return Optional.ofNullable(chooser.showSaveDialog(owner.get())).map(File::toPath);
    }

    @Override
    public Optional<Path> folder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        return Optional.ofNullable(chooser.showDialog(owner.get())).map(File::toPath);
    }

    @Override
    public boolean mayOverwrite(Path existing) {
        ButtonType overwrite = new ButtonType("Overwrite", ButtonBar.ButtonData.YES);
        ButtonType leave = new ButtonType("Leave it", ButtonBar.ButtonData.CANCEL_CLOSE);
        Alert alert = new Alert(
                Alert.AlertType.NONE,
                "Overwrite " + existing.getFileName() + "? What it holds now will be lost.",
                overwrite,
                leave);
        alert.setTitle("Overwrite a file");
        alert.initOwner(owner.get());
        Look.dress(
                alert.getDialogPane().getScene(),
                look.themeProperty().get(),
                look.textSizeProperty().get());
        return alert.showAndWait().filter(overwrite::equals).isPresent();
    }

    private static FileChooser chooser(String title, FileKind... kinds) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        for (FileKind kind : kinds) {
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind.name(), kind.patterns()));
        }
        return chooser;
    }
}
