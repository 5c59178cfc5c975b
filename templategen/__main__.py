"""``python -m templategen``."""

if __name__ == "__main__":  # a worker of the page's server looks at this file too, and must not start a second one
    from .cli import start

    start()
