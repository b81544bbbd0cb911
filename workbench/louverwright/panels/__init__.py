# SPDX-License-Identifier: LGPL-2.1-or-later
"""Task panels and preferences, built from the table of parameters.

Imports core, report, features, exchange and view; commands open what is here.  A panel writes into the document only
when it is accepted.
"""
