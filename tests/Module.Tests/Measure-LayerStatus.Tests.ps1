BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Measure-LayerStatus' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'sums up by file' {
        $sum = $file | Set-Layer -LayerNumber 7 -Mark Green | Measure-LayerStatus
        "$($sum.Key) $($sum.Parts) $($sum.Done) $($sum.Open) $($sum.PercentByCount)" | Should -Be "$($file.Path) 4 1 3 25"
        $areas = $file | Get-LayerStatus
        $sum.PercentByArea | Should -Be ([Math]::Round(100 * $areas[2].PaintedArea / ($areas | Measure-Object PaintedArea -Sum).Sum, 1))
        $sum.MissingOpposites | Should -Be 2
    }

    It 'reports a file without marks, never 0 %' {
        $sum = $file | Measure-LayerStatus
        $sum.PercentByCount | Should -BeNullOrEmpty
        $sum.Done | Should -BeNullOrEmpty
        $sum.Note | Should -BeLike 'No layer carries a mark*'
        $text = $sum | Out-String -Width 160
        $text | Should -Match '/hero\.psd\s+4\s+-\s+-\s+-\s+-\s+2\s+0\s+no marks'
        $text | Should -Not -Match '0[.,]0 %'
    }

    It 'sums up by <By>' -ForEach @(
        @{ By = 'Group'; Keys = 'Figure', 'Figure/Arm L', 'Figure/Head', 'Figure/Head/Eye L' }
        @{ By = 'Side'; Keys = 'Left', 'None' }
        @{ By = 'Mark'; Keys = 'None', 'Green' }
    ) {
        ($file | Set-Layer -LayerNumber 7 -Mark Green | Measure-LayerStatus -By $By).Key | Should -Be $Keys
    }

    It 'gives the same for files, layers and statuses' {
        $file | Set-Layer -LayerNumber 7 -Mark Green > $null
        $expected = $file | Measure-LayerStatus | ConvertTo-Json
        $file | Get-Layer | Measure-LayerStatus | ConvertTo-Json | Should -Be $expected
        $file | Get-LayerStatus | Measure-LayerStatus | ConvertTo-Json | Should -Be $expected
    }

    It 'sums up several files, each for itself' {
        $other = Copy-Fixture ag-marks-and-locks (Join-Path $TestDrive 'other.psd')
        $sums = Get-LayerFile $file.Path, $other | Measure-LayerStatus
        $sums.HasMarks | Should -Be $false, $true
    }

    It 'counts what is to be rechecked and what is missing, the same for files and statuses' {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $path = Copy-Fixture groups-nested (Join-Path $folder 'hero.psd')
        Get-LayerFile $path | Set-LayerStatus Done -LayerNumber 7 | Set-LayerStatus Recheck -Side Left > $null
        $plain = Get-LayerFile $path | Remove-Layer -Name Body
        $sum = $plain | Measure-LayerStatus -Ledger
        "$($sum.Parts) $($sum.Done) $($sum.Recheck) $($sum.Open) $($sum.Missing)" | Should -Be '3 1 2 0 1'
        $plain | Get-LayerStatus -Ledger | Measure-LayerStatus | ConvertTo-Json | Should -Be ($sum | ConvertTo-Json)
        $sum | Out-String -Width 160 | Should -Match '2 to recheck, 1 missing'
    }

    It 'appends a line to a history, and refuses a file with other columns' {
        $history = Join-Path $TestDrive 'runs/progress.csv'
        $file | Set-Layer -LayerNumber 7 -Mark Green | Measure-LayerStatus -History $history > $null
        $file, (Get-LayerFile $file.Path) | Measure-LayerStatus -Ledger -History $history > $null
        $lines = Import-Csv -LiteralPath $history
        $lines | ForEach-Object { "$($_.Files) $($_.Parts) $($_.Done) $($_.Recheck) $($_.Open) $($_.Unknown) $($_.Missing) $($_.SharePercent)" } | Should -Be '1 4 1  3 0  25', '1 8 1 0 3 4 0 25'
        $lines[0].Time | Should -Match '^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$'
        $file | Measure-LayerStatus -History $history -WhatIf > $null
        (Import-Csv -LiteralPath $history).Count | Should -Be 2
        Set-Content -LiteralPath $history -Value 'Day,Parts'
        $result = Get-Streams { $file | Measure-LayerStatus -History $history }
        "$($result.Errors[0])" | Should -BeLike '*other columns*'
        Get-Content -LiteralPath $history | Should -Be 'Day,Parts'
    }
}
