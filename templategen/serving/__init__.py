"""The page on the sewist's own machine: a small HTTP server, and the processes in which its work is done.

A request passes ``protocol`` (what is no HTTP), ``guards`` (who may ask, and how much), ``app`` (what is asked,
shaped as in ``bodies``) and goes through ``workers`` to a process of its own, ``__main__``, which calls one plain
function of ``answers`` and makes an ``outcome`` of what that returns or raises. ``running`` starts and stops all of it.
"""
