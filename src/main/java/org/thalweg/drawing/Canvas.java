package org.thalweg.drawing;

import java.util.Optional;

/** What a sheet is put out on. Coordinates are the sheet's. */
interface Canvas {

    void run(double[] corners, boolean closed, Optional<Pen> pen, Optional<Ink> fill);

    void dots(double[] places, Dot dot);

    void words(Stroke.Words words);
}
