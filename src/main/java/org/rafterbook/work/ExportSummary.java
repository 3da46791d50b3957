package org.rafterbook.work;

import java.nio.file.Path;
import java.util.List;

/**
 * What an export wrote.
 *
 * @param folder where it lies
 * @param files names of the files
 * @param flights how many flights are in them
 * @param remarks sentences on what is not in them
 */
public record ExportSummary(Path folder, List<String> files, int flights, List<String> remarks) {

    public ExportSummary {
        files = List.copyOf(files);
        remarks = List.copyOf(remarks);
    }
}
