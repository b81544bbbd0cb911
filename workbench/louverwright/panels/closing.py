# SPDX-License-Identifier: LGPL-2.1-or-later
"""What panels that change nothing share: which vent they are about, and how they end: by button, by Escape, with the vent."""

from __future__ import annotations

from collections.abc import Callable

import FreeCAD
from PySide import QtCore, QtGui

from ..features.generations import as_number


def close_button() -> int:
    """Close, as FreeCAD wants to be told of it in every version of Qt; Escape presses it."""
    return as_number(QtGui.QDialogButtonBox.Close)


def vent_label(obj: FreeCAD.DocumentObject) -> QtGui.QLabel:
    """Which vent a panel is about, in lines as long as there is room for; a long title would hold the panel wide."""
    label = QtGui.QLabel(obj.Label)
    label.setObjectName("WhichVent")
    label.setTextFormat(QtCore.Qt.PlainText)
    label.setWordWrap(True)
    return label


class EndsWith:
    """Has ``close`` called once a document is closed, or a vent in it deleted, until ``stop``."""

    def __init__(self, document: FreeCAD.Document, vent: FreeCAD.DocumentObject | None, close: Callable[[], object]) -> None:
        self.document, self.name, self.close = document.Name, vent.Name if vent is not None else "", close
        self.later = QtCore.QTimer()    # FreeCAD is not to lose an observer while it talks to it
        self.later.setSingleShot(True)
        self.later.setInterval(0)
        self.later.timeout.connect(self._look)
        FreeCAD.addDocumentObserver(self)

    def slotDeletedDocument(self, document: FreeCAD.Document) -> None:
        """FreeCAD's word that a document is closed."""
        self.later.start()

    def slotDeletedObject(self, obj: FreeCAD.DocumentObject) -> None:
        """FreeCAD's word that an object is deleted."""
        self.later.start()

    @property
    def is_gone(self) -> bool:
        """Whether there is no such document or vent any more."""
        document = FreeCAD.listDocuments().get(self.document)
        return document is None or (bool(self.name) and document.getObject(self.name) is None)

    def _look(self) -> None:
        if self.is_gone:
            self.close()

    def stop(self) -> None:
        """Listens no more."""
        self.later.stop()
        FreeCAD.removeDocumentObserver(self)
