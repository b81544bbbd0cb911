# SPDX-License-Identifier: LGPL-2.1-or-later
"""The add-on's commands, one class each: the only place that opens a transaction.

Imports every other room; nobody but InitGui imports it.
"""
